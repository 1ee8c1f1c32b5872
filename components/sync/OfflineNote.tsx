import type { Messages } from '@/lib/text/messages'
import { Note } from '../ui/Note'

type OfflineNoteProps = {
  /** Whole minutes without any word from the orchard. */
  minutesOutOfTouch: number
  /** How this site calls a stop: "Three long whistles mean stop work." */
  signal: string
  text: Messages['unsent']
}

/** From here on a phone says by itself that it may not know of a stop. */
const minutesUntilOutOfTouch = 15

/** The one thing that does not work without signal: a stop. The phone is never the alarm. */
export function OfflineNote({ minutesOutOfTouch, signal, text }: OfflineNoteProps) {
  const isLong = minutesOutOfTouch >= minutesUntilOutOfTouch
  return (
    <Note icon="warn" tone={isLong ? 'call' : 'plain'} lead={text.stopDoesNotReach} role="status">
      {text.stayInEarshot} {signal}
      {isLong && ` ${text.outOfTouch(minutesOutOfTouch)} ${text.outOfTouchNote}`}
    </Note>
  )
}

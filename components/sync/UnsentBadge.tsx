import type { DoorMessages } from '@/lib/text/messages'
import { NetBadge, type NetState } from '../ui/NetBadge'

type UnsentBadgeProps = {
  unsent: number
  /** Refused while nobody looked; somebody must read why. */
  needYou: number
  online: boolean
  href?: string | undefined
  text: DoorMessages['common']['net']
}

/** The signal and what waits for it. The most pressing of them is what is said. */
export function UnsentBadge({ href, text, ...outbox }: UnsentBadgeProps) {
  const { state, words } = whatToSay(outbox, text)
  return (
    <NetBadge state={state} href={href}>
      {words}
    </NetBadge>
  )
}

function whatToSay(
  { unsent, needYou, online }: Pick<UnsentBadgeProps, 'unsent' | 'needYou' | 'online'>,
  text: DoorMessages['common']['net']
): { state: NetState; words: string } {
  if (needYou > 0) return { state: 'needsYou', words: text.needsYou(needYou) }
  if (!online && unsent > 0) return { state: 'kept', words: text.kept(unsent) }
  if (!online) return { state: 'offline', words: text.offline }
  if (unsent > 0) return { state: 'sending', words: text.sending(unsent) }
  return { state: 'sent', words: text.sent }
}

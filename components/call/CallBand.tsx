'use client'

import { callsToMe, type OpenCall, useNow, useSelect } from '@/lib/hooks'
import { routes } from '@/lib/routes'
import { useLeadWords } from '../crew/use-lead-words'
import { CallRow } from './CallRow'

/** As many as leave room for the work below; where there are more, the last one says how many. */
const mostRows = 3

/** Calls for help above everything a lead is doing, the gravest and oldest first. */
export function CallBand({ onEnd }: { onEnd: (call: OpenCall) => void }) {
  const { calls: text } = useLeadWords()
  const now = useNow(5_000)
  const calls = useSelect((view) => (now === null ? [] : callsToMe(view, now)))
  const shown = calls.length > mostRows ? calls.slice(0, mostRows - 1) : calls
  const more = calls.length - shown.length

  return (
    <>
      {shown.map((call) => (
        <CallRow key={call.id} call={call} onEnd={() => onEnd(call)} />
      ))}
      {more > 0 && (
        <div>
          <a className="btn is-wide" href={routes.calls()}>
            {text.more(more)}
          </a>
        </div>
      )}
    </>
  )
}

'use client'

import { useLeadWords } from '../crew/use-lead-words'
import { isOnlyHere } from '../layout/use-origin'
import { Note } from '../ui/Note'

/** Where printed codes lead, and for how long: what is on paper cannot be changed any more. */
export function AddressNote({ origin }: { origin: string }) {
  const { labels: text } = useLeadWords()
  if (isOnlyHere(origin))
    return (
      <Note tone="call" icon="warn">
        {text.onlyHere}
      </Note>
    )
  if (origin.startsWith('http:'))
    return (
      <Note tone="call" icon="warn">
        {text.trial}
      </Note>
    )
  return <p className="small">{text.opensAt(origin)}</p>
}

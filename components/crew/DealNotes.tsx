'use client'

import { Note } from '../ui/Note'
import type { DealCheck } from './check-deal'
import { DealReason } from './DealReason'
import { useLeadWords } from './use-lead-words'

/** Said before anything is dealt: what cannot be, who loses trees, and who works next to them. */
export function DealNotes({ check, to }: { check: DealCheck; to: string }) {
  const { leadMap } = useLeadWords()
  return (
    <>
      {check.cannotCount > 0 && (
        <Note icon="lock" role="status" lead={leadMap.cannotDealCount(check.cannotCount)}>
          <ul className="not-dealt">
            {check.cannot.map((reason) => (
              <DealReason key={reason.code} {...reason} />
            ))}
          </ul>
        </Note>
      )}
      {check.fromOthers.map((reason) => (
        <Note
          key={reason.code}
          icon="people"
          role="status"
          lead={leadMap.fromOthers(reason.trees.length)}
        >
          <ul className="not-dealt">
            <DealReason {...reason} />
          </ul>
        </Note>
      ))}
      {check.nextTo.map((reason) => (
        <Note key={reason.code} icon="warn" role="status" lead={leadMap.nextTo(to)}>
          <ul className="not-dealt">
            <DealReason {...reason} />
          </ul>
        </Note>
      ))}
    </>
  )
}

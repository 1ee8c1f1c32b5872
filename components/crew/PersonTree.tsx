'use client'

import { useSelect } from '@/lib/hooks'
import { Panel } from '../ui/Panel'
import { ClaimFor } from './ClaimFor'
import { claimWith } from './claims'
import { dealtTreesOf } from './dealt-trees'
import { HauledFor } from './HauledFor'
import { HeldFor } from './HeldFor'
import { useLeadWords } from './use-lead-words'

/** The tree they are at, or the one dealt to them that comes next. */
export function PersonTree({ id, name }: { id: string; name: string }) {
  const { people: text } = useLeadWords()
  const claim = useSelect((view) => claimWith(view, id))
  const dealt = useSelect((view) => dealtTreesOf(view, id))
  const [next] = dealt
  return (
    <Panel title={text.theirTree}>
      {claim?.row && <HauledFor id={id} name={name} claim={claim} row={claim.row} />}
      {claim && !claim.row && <HeldFor id={id} name={name} claim={claim} />}
      {!claim && next !== undefined && (
        <ClaimFor key={next} id={id} name={name} tree={next} others={dealt.slice(1)} />
      )}
      {!claim && next === undefined && (
        <p className="small">
          {text.noTree} {text.dealHint}
        </p>
      )}
    </Panel>
  )
}

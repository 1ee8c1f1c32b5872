'use client'

import { markOf } from '@/lib/domain/orchard/status'
import { holderOf } from '@/lib/events/look-ups'
import type { Claim } from '@/lib/events/state'
import { looksOf, useSelect } from '@/lib/hooks'
import { capitalised } from '@/lib/text/species'
import { useWords } from '../layout/Words'
import { markNameOf } from '../map/mark-name'
import { useNameOf } from '../sync/use-refusal-words'
import { Facts } from '../ui/Facts'

type TreeStatusProps = {
  tree: number
  claim: Claim | null
}

/** The mark of the map with its word, and who holds the tree. */
export function TreeStatus({ tree, claim }: TreeStatusProps) {
  const { common, tree: text } = useWords()
  const nameOf = useNameOf()
  const look = useSelect(looksOf).get(tree)
  const holder = claim && holderOf(claim)
  if (!look) return null
  return (
    <Facts
      facts={[
        { mark: markNameOf(look), text: <b>{capitalised(common.status[markOf(look)])}</b> },
        { icon: 'person', text: holder ? text.heldBy(nameOf(holder)) : text.notClaimed },
      ]}
    />
  )
}

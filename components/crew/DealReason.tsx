'use client'

import { useNameOf, useTagOf } from '../sync/use-refusal-words'
import { Tag } from '../ui/Tag'
import type { NotDealt } from './dealing'
import { useLeadWords } from './use-lead-words'
import { firstName } from './use-pair-name'
import { useRefusalsOf } from './use-refusals-of'

/** So many are named; a row of a hundred is not read on a bar. */
const namedTrees = 4

/** Trees with the reason that stands against dealing them, and who is at them. */
export function DealReason({
  code,
  trees,
  people = [],
}: NotDealt & { people?: readonly string[] }) {
  const { leadMap } = useLeadWords()
  const { cannotDealWhy } = leadMap
  const sentenceOf = useRefusalsOf()
  const nameOf = useNameOf()
  const tagOf = useTagOf()
  const why = Object.hasOwn(cannotDealWhy, code)
    ? cannotDealWhy[code as keyof typeof cannotDealWhy]
    : sentenceOf({ code })
  const names = people.map((id) => firstName(nameOf(id)))
  return (
    <li>
      <span className="tags">
        {trees.slice(0, namedTrees).map((tree) => (
          <Tag key={tree}>{tagOf(tree)}</Tag>
        ))}
      </span>
      {trees.length > namedTrees && leadMap.andMore(trees.length - namedTrees)}{' '}
      {names.length > 0 ? leadMap.whyWith(why, names.join(', ')) : why}
    </li>
  )
}

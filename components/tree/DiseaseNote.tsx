'use client'

import { cleanAfter, cutBelow, woodOf } from '@/lib/domain/disease/sanitation'
import type { Tree } from '@/lib/domain/orchard/types'
import { cleaningPolicyOf } from '@/lib/domain/safety/house-rules'
import { useSelect } from '@/lib/hooks'
import { useFormat } from '../layout/use-format'
import { useWords } from '../layout/Words'
import { More } from '../ui/More'
import { Note } from '../ui/Note'
import { signWords } from './flag-words'
import { useRoundKind } from './use-work-card'

/** What a disease flag on this tree asks of the hand and the blade: how far below, what is cleaned, where the wood goes. */
export function DiseaseNote({ tree: { no, species } }: { tree: Tree }) {
  const words = useWords()
  const format = useFormat()
  // Only a winter round finds the trees at rest; where nobody said, the longer distance counts.
  const growth = useRoundKind() === 'winter' ? 'dormant' : 'growing'
  const policy = useSelect((view) => cleaningPolicyOf(view.state?.orchard.houseRules ?? {}))
  const signs = useSelect((view) =>
    Object.values(view.state?.flags ?? {})
      .filter((flag) => flag.tree === no && flag.kind === 'disease')
      .map(({ sign }) => sign)
  )
  if (signs.length === 0) return null
  const { sick } = words.whatToCut
  const named = [...new Set(signs.map((sign) => signWords(words, 'disease', sign)))].join(', ')
  const below = cutBelow(signs, species, growth)
  return (
    <Note tone="sick" mark="disease" lead={words.tree.sickHere}>
      {named}.{' '}
      <b>{below === null ? sick.noNumber : sick.below(format.span(below.belowCm, 'up'))}</b>{' '}
      {sick.clean[cleanAfter(policy, growth)]} {sick.wood[woodOf(signs, species)]}
      <More title={words.whatToCut.why}>
        {below?.source && <p>{sick.belowWhy(sick.disease[below.disease], below.source)}</p>}
        <p>{sick.cleanHow}</p>
        <p>{sick.differ}</p>
        <p className="small">{sick.cleanSources}</p>
      </More>
    </Note>
  )
}

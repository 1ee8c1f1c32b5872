'use client'

import { acreM2, hectareM2, treesPerAcre, treesPerHectare } from '@/lib/domain/orchard/density'
import type { Layout } from '@/lib/domain/orchard/layout'
import { useLeadWords } from '../crew/use-lead-words'
import { useFormat } from '../layout/use-format'

/** What would be made, in numbers: in hectares and in acres, since one is easily taken for the other. */
export function BlockSums({ layout }: { layout: Layout }) {
  const { ground } = useLeadWords()
  const format = useFormat()
  const hectares = ground.hectares(format.number(layout.areaM2 / hectareM2, 2))
  const acres = ground.acres(format.number(layout.areaM2 / acreM2, 2))
  const sums = [
    { value: format.number(layout.rows), word: ground.sums.rows },
    { value: format.number(layout.trees.length - layout.gaps), word: ground.sums.trees },
    { value: `${hectares} · ${acres}`, word: ground.sums.area },
    {
      value: ground.fromTo(layout.inRow.least, layout.inRow.most),
      word: ground.sums.inRow,
    },
  ]
  const densities = [
    ground.perHectare(format.number(treesPerHectare(layout.spacing))),
    ground.perAcre(format.number(treesPerAcre(layout.spacing))),
  ]
  return (
    <div className="ground-sums">
      <dl>
        {sums.map(({ value, word }) => (
          <div key={word}>
            <dt>{word}</dt>
            <dd className="num">{value}</dd>
          </div>
        ))}
      </dl>
      <p className="small num">
        {densities.join(' · ')}. {ground.bySpacing}
      </p>
    </div>
  )
}

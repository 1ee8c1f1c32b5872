'use client'

import { capitalised } from '@/lib/text/species'
import { useLeadWords } from '../crew/use-lead-words'
import { useWords } from '../layout/Words'
import { CheckRow } from '../ui/CheckRow'
import { Segmented } from '../ui/Segmented'
import { compassPoint } from './compass'
import type { NewBlockNow } from './use-new-block'

/** From which side rows are counted, and from which end places: in words of the compass. */
export function NumberFields({ now }: { now: NewBlockNow }) {
  const { ground } = useLeadWords()
  const { ours } = useWords()
  const { block, numbers, change } = now
  const bearingDeg = numbers.bearingDeg ?? 0
  const towards = (turn: number) => capitalised(ours.sides[compassPoint(bearingDeg + turn)])
  return (
    <section className="ground-part">
      <h2>{ground.numbers}</h2>
      <Segmented
        label={ground.rowsFrom}
        options={[
          { value: 'left', label: towards(-90) },
          { value: 'right', label: towards(90) },
        ]}
        value={block.rowsFrom}
        onChange={(rowsFrom) => change({ rowsFrom })}
      />
      <Segmented
        label={ground.placesFrom}
        options={[
          { value: 'start', label: towards(180) },
          { value: 'end', label: towards(0) },
        ]}
        value={block.placesFrom}
        onChange={(placesFrom) => change({ placesFrom })}
      />
      <CheckRow checked={block.serpentine} onChange={(serpentine) => change({ serpentine })}>
        {ground.serpentine}
      </CheckRow>
    </section>
  )
}

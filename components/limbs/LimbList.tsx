'use client'

import { conditions } from '@/lib/domain/pruning/limb-balance'
import { useWords } from '../layout/Words'
import { MeasureField } from '../tree/MeasureField'
import { measures } from '../tree/measure'
import { Button } from '../ui/Button'
import { More } from '../ui/More'
import { Segmented } from '../ui/Segmented'
import type { NotedLimb } from './limbs-draft'
import { sideOf } from './side-of'

type LimbListProps = {
  limbs: readonly NotedLimb[]
  onChange: (limbs: readonly NotedLimb[]) => void
}

/** Each limb in words: where it points, how it is, and the way to take it off the list. */
export function LimbList({ limbs, onChange }: LimbListProps) {
  const { limbs: text, ours } = useWords()
  return (
    <ol className="limb-list">
      {limbs.map((limb, at) => {
        const no = at + 1
        const change = (part: Partial<NotedLimb>) =>
          onChange(limbs.map((other, place) => (place === at ? { ...other, ...part } : other)))
        return (
          // biome-ignore lint/suspicious/noArrayIndexKey: a limb is its place in the list
          <li key={at} className="panel">
            <div className="row">
              <b className="grow">
                {text.limbAt(no, limb.bearingDeg, ours.sides[sideOf(limb.bearingDeg)])}
              </b>
              <Button
                icon="cross"
                label={text.remove(no)}
                onPress={() => onChange(limbs.filter((_, place) => place !== at))}
              >
                {text.away}
              </Button>
            </div>
            <Segmented
              label={text.condition(no)}
              hideLabel
              options={conditions.map((value) => ({ value, label: text.conditions[value] }))}
              value={limb.condition}
              onChange={(condition) => change({ condition })}
            />
            <More title={text.more(no)}>
              <MeasureField
                label={text.thick}
                measure={measures.limbCm}
                value={limb.thick}
                onChange={(thick) => change({ thick })}
              />
              <MeasureField
                label={text.angle}
                hint={text.angleHint}
                measure={measures.angle}
                value={limb.angle}
                onChange={(angle) => change({ angle })}
              />
            </More>
          </li>
        )
      })}
    </ol>
  )
}

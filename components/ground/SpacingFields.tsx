'use client'

import { cornerLetter } from '@/lib/domain/orchard/corner-letter'
import { patterns } from '@/lib/domain/orchard/density'
import { ranges } from '@/lib/domain/orchard/layout'
import { sidesOf } from '@/lib/domain/orchard/outline'
import { useLeadWords } from '../crew/use-lead-words'
import { useWords } from '../layout/Words'
import { Button } from '../ui/Button'
import { SelectField } from '../ui/SelectField'
import { compassPoint } from './compass'
import { shownLength, unitOf, withUnit } from './lengths'
import { type LengthName, type Numbers, positionsIn } from './new-block'
import { StepField } from './StepField'
import type { NewBlockNow } from './use-new-block'

/** How the trees stand: pattern, distances, which way the rows run, and what stays free. */
export function SpacingFields({ now }: { now: NewBlockNow }) {
  const { ground } = useLeadWords()
  const { block, change } = now
  const isOneDistance = block.pattern === 'square' || block.pattern === 'hexagonal'
  return (
    <section className="ground-part">
      <SelectField
        label={ground.pattern}
        options={patterns.map((value) => ({ value, label: ground.patterns[value] }))}
        value={block.pattern}
        onChange={(pattern) =>
          change({ pattern: patterns.find((one) => one === pattern) ?? 'rectangular' })
        }
      />
      {!isOneDistance && <LengthField now={now} name="rowSpacing" label={ground.rowSpacing} />}
      <LengthField
        now={now}
        name="treeSpacing"
        label={isOneDistance ? ground.treeSpacingOnly : ground.treeSpacing}
      />
      <BearingField now={now} />
      <LengthField now={now} name="headland" label={ground.headland} hint={ground.headlandHint} />
      <LengthField now={now} name="firstRow" label={ground.firstRow} hint={ground.firstRowHint} />
    </section>
  )
}

type LengthFieldProps = { now: NewBlockNow; name: LengthName; label: string; hint?: string }

function LengthField({ now, name, label, hint }: LengthFieldProps) {
  const { ground } = useLeadWords()
  const { block, numbers, units, change } = now
  const metres = metresOf(numbers, name)
  const typed =
    block[name] ?? (name === 'firstRow' || metres === null ? '' : shownLength(metres, units))
  const { least, most } = ranges[`${name}M`]
  const stepM = units === 'us' ? 0.3048 : 0.1
  return (
    <StepField
      label={label}
      unit={unitOf(units)}
      value={typed}
      hint={hint}
      fault={metres === null && ground.range(withUnit(least, units), withUnit(most, units))}
      onChange={(next) => change({ [name]: next })}
      onStep={(by) => {
        const next = Math.min(most, Math.max(least, (metres ?? least) + by * stepM))
        change({ [name]: shownLength(next, units) })
      }}
    />
  )
}

function metresOf(numbers: Numbers, name: LengthName): number | null {
  const metres = numbers[`${name}M`]
  return metres === 'as the edge' ? numbers.headlandM : metres
}

function BearingField({ now }: { now: NewBlockNow }) {
  const { ground } = useLeadWords()
  const { ours } = useWords()
  const { block, numbers, change } = now
  const { bearingDeg } = numbers
  const corners = positionsIn(block)
  const sides = corners.length < 3 ? [] : sidesOf(corners).slice(0, 2)
  const turnTo = (degrees: number) => change({ bearing: String(Math.round((degrees + 360) % 360)) })
  return (
    <div>
      <StepField
        label={ground.bearing}
        unit="°"
        value={block.bearing ?? (bearingDeg === null ? '' : String(bearingDeg))}
        hint={bearingDeg !== null && ground.bearingIs(ours.sides[compassPoint(bearingDeg)])}
        fault={bearingDeg === null && ground.range('0°', '360°')}
        onChange={(bearing) => change({ bearing })}
        onStep={(by) => turnTo((bearingDeg ?? 0) + by)}
      />
      {sides.length > 0 && (
        <div className="ground-buttons">
          {sides.map((side, index) => (
            <Button key={cornerLetter(index)} low onPress={() => turnTo(side.bearingDeg)}>
              {ground.along(cornerLetter(index), cornerLetter(index + 1))}
            </Button>
          ))}
        </div>
      )}
    </div>
  )
}

'use client'

import { useId } from 'react'

import { cornerLetter } from '@/lib/domain/orchard/corner-letter'
import { readPosition } from '@/lib/domain/orchard/read-position'
import { useLeadWords } from '../crew/use-lead-words'
import { Button } from '../ui/Button'
import { Icon } from '../ui/Icon'
import { type NewBlock, withCornerAdded, withCornerAt } from './new-block'
import { StandingNote } from './StandingNote'
import type { NewBlockNow } from './use-new-block'
import { useWhereIStand } from './use-where-i-stand'

type CornersFieldProps = {
  now: NewBlockNow
  chosen: number | null
  onChoose: (corner: number | null) => void
}

/** As many as there are, three to begin with. */
const leastFields = 4

/** The corners as text, one a line, and the phone's own place as the next of them. */
export function CornersField({ now, chosen, onChoose }: CornersFieldProps) {
  const { ground } = useLeadWords()
  const { block, change } = now
  const here = useWhereIStand((position) => change(withCornerAdded(block, position)))
  const fields = Array.from(
    { length: Math.max(leastFields, block.corners.length) },
    (_, index) => block.corners[index] ?? ''
  )
  const write = (index: number, typed: string) => change(withCornerAt(padded(block), index, typed))
  return (
    <section className="ground-part">
      <h2>{ground.cornersTitle}</h2>
      <ol className="corners">
        {fields.map((typed, index) => (
          <CornerLine
            // biome-ignore lint/suspicious/noArrayIndexKey: a corner is its letter
            key={index}
            index={index}
            typed={typed}
            isChosen={index === chosen}
            onFocus={() => onChoose(index)}
            onChange={(next) => write(index, next)}
            onRemove={
              typed === '' && index >= block.corners.length
                ? null
                : () => {
                    onChoose(null)
                    change({ corners: block.corners.toSpliced(index, 1) })
                  }
            }
          />
        ))}
      </ol>
      <div className="ground-buttons">
        <Button
          icon="map"
          onPress={here.find}
          state={here.standing.state === 'finding' ? 'waiting' : 'ready'}
        >
          {ground.hereIsCorner}
        </Button>
        <Button kind="quiet" icon="plus" onPress={() => change({ corners: [...fields, ''] })}>
          {ground.addCorner}
        </Button>
      </div>
      <StandingNote standing={here.standing} />
    </section>
  )
}

type CornerLineProps = {
  index: number
  typed: string
  isChosen: boolean
  onFocus: () => void
  onChange: (typed: string) => void
  onRemove: (() => void) | null
}

function CornerLine({ index, typed, isChosen, onFocus, onChange, onRemove }: CornerLineProps) {
  const { ground } = useLeadWords()
  const faultId = useId()
  const read = readPosition(typed)
  const fault =
    read.state === 'read' || read.state === 'empty' ? null : ground.cornerFaults[read.state]
  const letter = cornerLetter(index)
  return (
    <li className={isChosen ? 'is-on' : undefined}>
      <span className="corner-letter" aria-hidden="true">
        {letter}
      </span>
      <input
        className="input num"
        aria-label={ground.corner(letter)}
        placeholder={ground.cornerHint}
        value={typed}
        onFocus={onFocus}
        onChange={(event) => onChange(event.target.value)}
        maxLength={60}
        aria-invalid={fault !== null || undefined}
        aria-describedby={fault === null ? undefined : faultId}
      />
      {onRemove && (
        <button
          type="button"
          className="corner-off"
          aria-label={ground.removeCorner(letter)}
          onClick={onRemove}
        >
          <Icon name="cross" size={20} />
        </button>
      )}
      {fault !== null && (
        <p className="corner-fault" id={faultId} role="alert">
          {fault}
        </p>
      )}
    </li>
  )
}

/** So that a later line can be typed in before an earlier one. */
function padded(block: NewBlock): NewBlock {
  return {
    ...block,
    corners: Array.from(
      { length: Math.max(leastFields, block.corners.length) },
      (_, i) => block.corners[i] ?? ''
    ),
  }
}

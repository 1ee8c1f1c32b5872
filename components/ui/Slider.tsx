import { type ReactNode, useId } from 'react'

import { Icon } from './Icon'

type SliderProps = {
  label: ReactNode
  /** Whole steps, so that nothing drifts. */
  value: number
  least: number
  most: number
  onChange: (value: number) => void
  /** What the value means, seen beside the label and spoken. */
  says: string
  lessLabel: string
  moreLabel: string
}

/** A number set by the thumb, by the arrow keys, or a step at a time by two buttons. */
export function Slider(props: SliderProps) {
  const { label, value, least, most, onChange, says, lessLabel, moreLabel } = props
  const id = useId()
  const to = (next: number) => onChange(Math.min(most, Math.max(least, next)))
  return (
    <div className="field">
      <div className="row slider-head">
        <label className="lab" htmlFor={id}>
          {label}
        </label>
        <output className="num" htmlFor={id}>
          {says}
        </output>
      </div>
      <div className="row slider">
        <button type="button" aria-label={lessLabel} onClick={() => to(value - 1)}>
          <Icon name="minus" />
        </button>
        <input
          id={id}
          type="range"
          min={least}
          max={most}
          step={1}
          value={value}
          aria-valuetext={says}
          onChange={(event) => to(Number(event.target.value))}
        />
        <button type="button" aria-label={moreLabel} onClick={() => to(value + 1)}>
          <Icon name="plus" />
        </button>
      </div>
    </div>
  )
}

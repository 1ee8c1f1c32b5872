import { type ReactNode, useId } from 'react'

import { Icon, type IconName } from './Icon'
import { joinClasses } from './join-classes'

type SegmentedProps<Value extends string> = {
  label: ReactNode
  /** The label is there for the ear only, since the words beside it say it to the eye. */
  hideLabel?: boolean
  options: readonly {
    value: Value
    label: string
    icon?: IconName
    /** The language the label is written in, where it is not the page's. */
    lang?: string
    /** What the choice says, green or red, once it is made. */
    tone?: 'yes' | 'no'
  }[]
  value: Value | null
  onChange: (value: Value) => void
  low?: boolean
  /** Icons alone in squares, the label for the ear. */
  squares?: boolean
}

/** One of a few, side by side: real radios under painted segments. */
export function Segmented<Value extends string>(props: SegmentedProps<Value>) {
  const { label, hideLabel = false, options, value, onChange, low, squares } = props
  const name = useId()
  return (
    <fieldset className="field">
      <legend className={hideLabel ? 'sr' : 'lab'}>{label}</legend>
      <div className={joinClasses('seg', low && 'is-low', squares && 'is-squares')}>
        {options.map((option) => (
          <label
            key={option.value}
            lang={option.lang}
            className={joinClasses(
              option.value === value && 'is-on',
              option.tone && `is-${option.tone}`
            )}
          >
            <input
              className="sr"
              type="radio"
              name={name}
              value={option.value}
              checked={option.value === value}
              onChange={() => onChange(option.value)}
            />
            <span className="ring" />
            {option.icon && <Icon name={option.icon} />}
            <span className={squares ? 'sr' : undefined}>{option.label}</span>
          </label>
        ))}
      </div>
    </fieldset>
  )
}

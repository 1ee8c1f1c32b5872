import { Icon } from './Icon'
import './stepper.css'

type StepperProps = {
  label: string
  /** As it is read, with its unit. */
  shown: string
  less: { label: string; onPress: () => void }
  more: { label: string; onPress: () => void }
  /** Takes the value away again. */
  clear?: { label: string; onPress: () => void } | undefined
  hint?: string | undefined
}

/** A number that is set by two large keys, for a thumb in a glove. */
export function Stepper({ label, shown, less, more, clear, hint }: StepperProps) {
  return (
    // biome-ignore lint/a11y/useSemanticElements: a fieldset cannot be a grid everywhere
    <div className="stepper" role="group" aria-label={label}>
      <div className="stepper-head">
        <span className="lab">{label}</span>
        {clear && (
          <button
            type="button"
            className="stepper-clear"
            onClick={clear.onPress}
            aria-label={clear.label}
          >
            <Icon name="cross" size={18} />
          </button>
        )}
      </div>
      <div className="stepper-keys">
        <button type="button" className="btn" onClick={less.onPress} aria-label={less.label}>
          <Icon name="minus" />
        </button>
        <output aria-live="polite">{shown}</output>
        <button type="button" className="btn" onClick={more.onPress} aria-label={more.label}>
          <Icon name="plus" />
        </button>
      </div>
      {hint && <p className="small">{hint}</p>}
    </div>
  )
}

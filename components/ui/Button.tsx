import { ButtonFace, type ButtonLook, type ButtonState, buttonClasses } from './button-look'
import { leadToOpenQuestion } from './lead-to-open-question'

export type ButtonProps = ButtonLook &
  ButtonState & {
    onPress?: () => void
    /** `submit` inside a form; a button that is off or waiting never submits. */
    type?: 'button' | 'submit'
    /** Where the words alone do not say enough ("Here" beside each of twelve names). */
    label?: string | undefined
    expanded?: boolean
  }

/** A button in all its states. Never natively disabled: the reason must be reachable. */
export function Button(props: ButtonProps) {
  const { state = 'ready', onPress, type = 'button', label, expanded } = props
  const isHeld = state === 'off' || state === 'waiting'
  return (
    <button
      type={isHeld ? 'button' : type}
      className={buttonClasses(props, state)}
      onClick={
        state === 'off'
          ? ({ currentTarget }) => leadToOpenQuestion(currentTarget)
          : isHeld
            ? undefined
            : onPress
      }
      aria-disabled={isHeld || undefined}
      aria-describedby={props.state === 'off' ? props.describedBy : undefined}
      aria-label={label}
      aria-expanded={expanded}
    >
      <ButtonFace {...props} />
    </button>
  )
}

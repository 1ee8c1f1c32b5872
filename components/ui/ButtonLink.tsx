import { ButtonFace, type ButtonLook, type ButtonState, buttonClasses } from './button-look'

export type ButtonLinkProps = ButtonLook &
  ButtonState & {
    href: string
    label?: string | undefined
  }

/** A way to another screen that looks like a button. Off, it leads nowhere but can be read. */
export function ButtonLink(props: ButtonLinkProps) {
  const { state = 'ready', href, label } = props
  const className = buttonClasses(props, state)

  if (props.state === 'off')
    return (
      // biome-ignore lint/a11y/useSemanticElements: a link without href is the way to a disabled link
      <span
        role="link"
        tabIndex={0}
        className={className}
        aria-disabled="true"
        aria-describedby={props.describedBy}
        aria-label={label}
      >
        <ButtonFace {...props} />
      </span>
    )

  return (
    <a href={href} className={className} aria-label={label}>
      <ButtonFace {...props} />
    </a>
  )
}

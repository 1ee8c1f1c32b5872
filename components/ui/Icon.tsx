import type { IconName } from './icon-shapes'

export type { IconName } from './icon-shapes'

type IconProps = {
  name: IconName
  size?: number
  /** Only where no word stands beside it; otherwise the icon is silent. */
  label?: string | undefined
}

/** One of our icons, taken from the sprite in the page, so that it costs no script. */
export function Icon({ name, size = 24, label }: IconProps) {
  return (
    <svg
      className="ic"
      width={size}
      height={size}
      viewBox="0 0 24 24"
      role={label && 'img'}
      aria-label={label}
      aria-hidden={!label}
    >
      <use href={`#i-${name}`} />
    </svg>
  )
}

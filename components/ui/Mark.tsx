import type { MarkName } from './mark-shapes'

export type { MarkName } from './mark-shapes'

type MarkProps = {
  name: MarkName
  size?: number
  /** Only where no word stands beside it. */
  label?: string | undefined
}

/** The mark of a status, as on the map. */
export function Mark({ name, size = 20, label }: MarkProps) {
  return (
    <svg
      className="mk"
      width={size}
      height={size}
      viewBox="-8.5 -8.5 17 17"
      role={label && 'img'}
      aria-label={label}
      aria-hidden={!label}
    >
      <use href={`#m-${name}`} x="-8.5" y="-8.5" width="17" height="17" />
    </svg>
  )
}

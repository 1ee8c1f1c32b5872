type LogoProps = {
  size?: number
  label?: string | undefined
}

/** Three trees on a line, one called. */
export function Logo({ size = 28, label }: LogoProps) {
  return (
    <svg
      className="logo"
      height={size}
      width={size * 1.2}
      viewBox="0 0 48 40"
      role={label && 'img'}
      aria-label={label}
      aria-hidden={!label}
    >
      <path d="M1 31.5H47" stroke="currentColor" strokeWidth="3.4" />
      <circle cx="9" cy="31" r="5.5" fill="currentColor" />
      <circle cx="39" cy="31" r="5.5" fill="currentColor" />
      <path d="M24 31V16" stroke="currentColor" strokeWidth="4" />
      <circle
        cx="24"
        cy="12"
        r="9.3"
        fill="var(--called)"
        stroke="currentColor"
        strokeWidth="3.4"
      />
    </svg>
  )
}

type PlateTextProps = {
  x: number
  y: number
  size: number
  className?: string
  children: string
}

/** A bold letter is about so wide, of its height. */
const letterWide = 0.6

/**
 * Words in the middle of a piece of paper, so that they are read over marks and over a picture. No outline
 * round the letters: printers darken light text, and some readers of PDF draw its outline over it.
 */
export function PlateText({ x, y, size, className, children }: PlateTextProps) {
  const width = [...children].length * size * letterWide + 6
  return (
    <>
      <rect
        className="paper-behind"
        x={x - width / 2}
        y={y - size * 0.62}
        width={width}
        height={size * 1.24}
      />
      <text className={className} x={x} y={y} dy="0.36em" fontSize={size}>
        {children}
      </text>
    </>
  )
}

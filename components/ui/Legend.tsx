import { Mark, type MarkName } from './Mark'

type LegendProps = {
  label: string
  items: readonly { mark: MarkName; word: string; count?: number }[]
}

/** What the marks mean, and how many there are of each. */
export function Legend({ label, items }: LegendProps) {
  return (
    <ul className="legend" aria-label={label}>
      {items.map(({ mark, word, count }) => (
        <li key={mark}>
          <Mark name={mark} size={18} />
          {word}
          {count !== undefined && <b className="num">{count}</b>}
        </li>
      ))}
    </ul>
  )
}

import { joinClasses } from './join-classes'

type PlateProps = {
  /** Up to three cells, each a small word over a large sign. */
  cells: readonly { word: string; sign: string }[]
  /** The whole name as it is spoken. */
  label: string
  small?: boolean
}

/** A name stamped in a plate with two nail holes. */
export function Plate({ cells, label, small = false }: PlateProps) {
  return (
    <div className={joinClasses('plate', small && 'is-small')} role="img" aria-label={label}>
      <i className="hole" />
      {cells.map(({ word, sign }) => (
        <span className="cell" key={word}>
          <small>{word}</small>
          <b>{sign}</b>
        </span>
      ))}
      <i className="hole" />
    </div>
  )
}

import type { ReactNode } from 'react'

type ListProps = {
  label?: string
  children: ReactNode
}

/** Things of one kind below each other. */
export function List({ label, children }: ListProps) {
  return (
    <ul className="list" aria-label={label}>
      {children}
    </ul>
  )
}

type ListItemProps = {
  /** An icon, a mark or a face. */
  lead?: ReactNode
  title: ReactNode
  note?: ReactNode
  end?: ReactNode
  /** A way or a press, not both. */
  href?: string | undefined
  onPress?: (() => void) | undefined
}

/** One row of a list; with a way or a press the whole row is the target. */
export function ListItem({ lead, title, note, end, href, onPress }: ListItemProps) {
  const face = (
    <>
      {lead}
      <span className="grow">
        <b>{title}</b>
        {note !== undefined && <span className="small">{note}</span>}
      </span>
      {end !== undefined && <span className="end">{end}</span>}
    </>
  )
  return (
    <li>
      {href !== undefined ? (
        <a className="item" href={href}>
          {face}
        </a>
      ) : onPress !== undefined ? (
        <button type="button" className="item" onClick={onPress}>
          {face}
        </button>
      ) : (
        <div className="item">{face}</div>
      )}
    </li>
  )
}

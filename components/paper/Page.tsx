import type { ReactNode } from 'react'

import { useAsOf } from './use-as-of'

type PageProps = {
  title: string
  note?: ReactNode
  children: ReactNode
}

/** What begins on a sheet of its own. Which orchard and when stands on each. */
export function Page({ title, note, children }: PageProps) {
  const asOf = useAsOf()
  return (
    <section className="paper-sheet" aria-label={title}>
      <header>
        <p className="as-of">{asOf}</p>
        <h2>{title}</h2>
        {note !== undefined && <p>{note}</p>}
      </header>
      {children}
    </section>
  )
}

type PaperTableProps = {
  title: string
  /** Each with its width in the stylesheet: `w-` and the name. */
  columns: readonly { name: string; head: string }[]
  children: ReactNode
}

/** A table whose head comes again on each sheet, with the orchard and the time. */
export function PaperTable({ title, columns, children }: PaperTableProps) {
  const asOf = useAsOf()
  return (
    <table aria-label={title}>
      {/* The widths: the first row of the head is one cell and says nothing about them. */}
      <colgroup>
        {columns.map(({ name }) => (
          <col key={name} className={`w-${name}`} />
        ))}
      </colgroup>
      <thead>
        <tr className="running">
          <th colSpan={columns.length} scope="colgroup">
            {title} <span>{asOf}</span>
          </th>
        </tr>
        <tr>
          {columns.map(({ name, head }) => (
            <th key={name} scope="col">
              {head}
            </th>
          ))}
        </tr>
      </thead>
      {children}
    </table>
  )
}

/** Lines to write on. */
export function BlankRows({ count, columns }: { count: number; columns: number }) {
  return Array.from({ length: count }, (_, row) => `line-${row}`).map((key) => (
    <tr key={key} className="blank">
      {Array.from({ length: columns }, (_, column) => `${key}-${column}`).map((cell) => (
        <td key={cell} />
      ))}
    </tr>
  ))
}

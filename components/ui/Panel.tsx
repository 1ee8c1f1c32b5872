import { type ReactNode, useId } from 'react'

type PanelProps = {
  title?: ReactNode
  children: ReactNode
}

/** A paper ground for things that belong together. Never inside another one. */
export function Panel({ title, children }: PanelProps) {
  const titleId = useId()
  if (title === undefined) return <div className="panel">{children}</div>
  return (
    <section className="panel" aria-labelledby={titleId}>
      <h2 id={titleId}>{title}</h2>
      {children}
    </section>
  )
}

import type { ReactNode } from 'react'

import { Note } from '../ui/Note'

type RefusedNoteProps = {
  /** What was refused: "Claim on S 7·15". */
  title: ReactNode
  /** Everything that stands in the way, each in a sentence. */
  reasons: readonly string[]
  /** What the person wrote, kept. */
  written?: ReactNode
  /** The ways on. */
  children?: ReactNode
}

/** What became of a refused command: said in full, with the way on, and nothing that was written lost. */
export function RefusedNote({ title, reasons, written, children }: RefusedNoteProps) {
  return (
    <section className="stack">
      <Note icon="cross" tone="stop" lead={title} role="alert">
        <ul>
          {reasons.map((reason) => (
            <li key={reason}>{reason}</li>
          ))}
        </ul>
      </Note>
      {written}
      {children}
    </section>
  )
}

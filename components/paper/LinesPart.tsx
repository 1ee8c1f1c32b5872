'use client'

import { useLeadWords } from '../crew/use-lead-words'
import { BlankRows, PaperTable } from './Page'

/** Lines for all that is not foreseen. */
export function LinesPart() {
  const { paper: text } = useLeadWords()
  const columns = [
    { name: 'clock', head: text.when },
    { name: 'where', head: text.where },
    { name: 'what', head: text.what },
    { name: 'who', head: text.who },
  ]
  return (
    <section className="paper-sheet" aria-label={text.lines}>
      <p>{text.linesNote}</p>
      <PaperTable title={text.lines} columns={columns}>
        <tbody>
          <BlankRows count={20} columns={columns.length} />
        </tbody>
      </PaperTable>
    </section>
  )
}

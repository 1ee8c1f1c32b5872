'use client'

import { useLeadWords } from '../crew/use-lead-words'
import { BlankRows, Page, PaperTable } from './Page'

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
    <Page title={text.lines} note={text.linesNote}>
      <PaperTable title={text.lines} columns={columns}>
        <tbody>
          <BlankRows count={20} columns={columns.length} />
        </tbody>
      </PaperTable>
    </Page>
  )
}

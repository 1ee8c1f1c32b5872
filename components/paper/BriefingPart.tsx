'use client'

import { useBriefing, useSelect } from '@/lib/hooks'
import { peopleInOrder } from '../crew/readiness'
import { useLeadWords } from '../crew/use-lead-words'
import { useLanguage, useWords } from '../layout/Words'
import { topicWords } from '../ready/topic-words'
import { useNameOf } from '../sync/use-refusal-words'
import { BlankRows, Page, PaperTable } from './Page'
import { useShiftOnPaper } from './use-shift-on-paper'

/** The topics to read aloud, and who heard them signs. */
export function BriefingPart() {
  const words = useWords()
  const { paper: text } = useLeadWords()
  const language = useLanguage()
  const nameOf = useNameOf()
  const shift = useShiftOnPaper()
  const briefing = useBriefing(shift?.id ?? null)
  const ids = useSelect((view) => peopleInOrder(view).map(({ id }) => id))
  const known = briefing.state === 'read' ? briefing.value : null
  const columns = [
    { name: 'name', head: text.name },
    { name: 'sign', head: text.signature },
  ]
  return (
    <>
      <Page title={text.briefing} note={text.briefingNote}>
        {known === null && <p>{text.noBriefing}</p>}
        {known && (
          <ol className="paper-topics">
            {known.topics.map((topic) => {
              const { title, says, own } = topicWords(topic, language, words)
              return (
                <li key={topic.code}>
                  <h3>{title}</h3>
                  {own && <p lang={own.lang}>{own.words}</p>}
                  {says.map((sentence) => (
                    <p key={sentence}>{sentence}</p>
                  ))}
                </li>
              )
            })}
          </ol>
        )}
        <p className="sign-line">{text.givenBy}</p>
      </Page>
      <section className="paper-sheet" aria-label={`${text.briefing}: ${text.signature}`}>
        <PaperTable
          title={`${text.briefing}. ${known ? text.versionOf(known.version) : ''}`}
          columns={columns}
        >
          <tbody>
            {ids.map((id) => (
              <tr key={id}>
                <th scope="row">{nameOf(id)}</th>
                <td />
              </tr>
            ))}
            <BlankRows count={8} columns={columns.length} />
          </tbody>
        </PaperTable>
      </section>
    </>
  )
}

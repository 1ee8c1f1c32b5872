'use client'

import { errorFile } from '@/lib/domain/orchard/inventory-error-file'
import { groupBy } from '@/lib/util/group-by'
import { useLeadWords } from '../crew/use-lead-words'
import { saveFile } from '../shift/save-file'
import { Button } from '../ui/Button'
import { Panel } from '../ui/Panel'
import { LeaveOutWrong } from './LeaveOutWrong'
import type { Reading } from './reading'
import type { SaidDraft } from './use-bring-in'
import { useProblemSentence } from './use-problem-sentence'

const mostShown = 50

/** Row by row what is wrong and what to do; all of it also as a file to work through. */
export function WrongRows({ reading, said }: { reading: Reading; said: SaidDraft }) {
  const { table, problems } = reading
  const { bringIn: text, inventory } = useLeadWords()
  const sentenceOf = useProblemSentence(null)
  const byLine = [...groupBy(problems, ({ line }) => line)]
  const download = () => {
    const heads = { line: text.headLine, problem: text.headProblem }
    saveFile(text.fileOfErrors, errorFile(table, problems, sentenceOf, heads))
  }
  return (
    <Panel title={text.wrongTitle(byLine.length)}>
      <div className="stack">
        <p>{text.wrongLead}</p>
        <ul className="wrong-rows">
          {byLine.slice(0, mostShown).map(([line, ofLine]) => (
            <li key={line}>
              <b>{table.kind === 'geojson' ? text.atFeature(line) : inventory.atLine(line)}</b>{' '}
              {ofLine.map(sentenceOf).join(' ')}
            </li>
          ))}
        </ul>
        {byLine.length > mostShown && <p>{text.moreWrong(byLine.length - mostShown)}</p>}
        <Button onPress={download}>{text.download}</Button>
        <LeaveOutWrong reading={reading} said={said} />
      </div>
    </Panel>
  )
}

'use client'

import '../paper/paper.css'
import '../paper/paper-print.css'

import { inWalkingOrder, type ToScout } from '@/lib/domain/disease/scouting'
import { useSelect } from '@/lib/hooks'
import { capitalised, speciesWords } from '@/lib/text/species'
import { useLeadWords } from '../crew/use-lead-words'
import { useWords } from '../layout/Words'
import { PaperTable } from '../paper/Page'
import { useTagOf } from '../sync/use-refusal-words'
import { whyScouted } from './scouting-words'

/** The list as it comes out of the printer, with room to write; on the screen nobody sees it. */
export function ScoutingPaper({ toScout, where }: { toScout: readonly ToScout[]; where: string }) {
  const words = useWords()
  const leadWords = useLeadWords()
  const { disease } = leadWords
  const tagOf = useTagOf()
  const trees = useSelect((view) => view.ground.trees)
  const { columns } = disease
  return (
    <div className="paper-pages disease-paper">
      <section className="paper-sheet">
        <PaperTable
          title={disease.paperTitle(where)}
          columns={[
            { name: 'who', head: columns.tree },
            { name: 'where', head: columns.kind },
            { name: 'breaks', head: columns.why },
            { name: 'clock', head: columns.healthy },
            { name: 'seen', head: columns.seen },
          ]}
        >
          <tbody>
            {inWalkingOrder(toScout, trees).map((one) => (
              <tr key={one.no}>
                <td>{tagOf(one.no)}</td>
                <td>
                  {capitalised(speciesWords(words, trees.get(one.no)?.species ?? 'other').name)}
                </td>
                <td>{whyScouted(leadWords, one)}</td>
                <td />
                <td />
              </tr>
            ))}
          </tbody>
        </PaperTable>
        <p>{disease.paperNote}</p>
      </section>
    </div>
  )
}

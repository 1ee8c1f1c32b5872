'use client'

import { markOf } from '@/lib/domain/orchard/status'
import { isInRound, looksOf, refusalsFor, useSelect } from '@/lib/hooks'
import { capitalised } from '@/lib/text/species'
import { useFormat } from '../layout/use-format'
import { useWords } from '../layout/Words'
import { markNameOf } from '../map/mark-name'
import { ageWords, kindWords } from '../tree/tree-words'
import { type TreeFacts, useThisYear } from '../tree/use-tree'
import { Facts } from '../ui/Facts'
import { useLeadWords } from './use-lead-words'
import { useRefusalsOf } from './use-refusals-of'

/** Why a tree is drawn as closed. */
const closing = ['inside_keep_out', 'tree_left_out', 'species_off']

/** What tree it is, and how far it is in this round. */
export function TreeStanding({ facts: { tree, cultivar } }: { facts: TreeFacts }) {
  const words = useWords()
  const { leadMap } = useLeadWords()
  const format = useFormat()
  const thisYear = useThisYear()
  const look = useSelect((view) => looksOf(view).get(tree.no))
  const work = useSelect((view) => view.state?.work[tree.no] ?? null)
  const isMarked = useSelect((view) => view.state?.marked[tree.no] !== undefined)
  const closed = useSelect((view) =>
    refusalsFor(view, tree.no).filter(({ code }) => closing.includes(code))
  )
  const sentenceOf = useRefusalsOf()
  const inRound = useSelect((view) => isInRound(view, tree))

  const status = words.common.status[look ? markOf(look) : 'unpruned']
  const begun =
    work?.state === 'begun' && work.share !== null
      ? leadMap.shareDone(format.share(work.share / 100))
      : null
  const asks = [
    tree.heightCm === null
      ? leadMap.noHeight
      : leadMap.heightOf(format.height(tree.heightCm / 100)),
    tree.asksSaw ? leadMap.asksSaw : null,
  ]
  const age = ageWords(words, tree, thisYear) ?? leadMap.noPlanted
  return (
    <Facts
      facts={[
        {
          mark: markNameOf(look),
          text: <b>{capitalised([status, begun].filter(Boolean).join(', '))}</b>,
        },
        { icon: 'wheel', text: `${kindWords(words, tree, cultivar)}, ${age}` },
        { icon: 'ladder', text: capitalised(asks.filter(Boolean).join(', ')) },
        ...closed.map((reason) => ({ icon: 'lock', text: sentenceOf(reason) }) as const),
        ...(isMarked ? [{ icon: 'check', text: leadMap.marked } as const] : []),
        ...(inRound ? [] : [{ icon: 'info', text: leadMap.notInRound } as const]),
      ]}
    />
  )
}

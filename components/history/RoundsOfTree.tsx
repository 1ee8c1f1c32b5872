'use client'

import type { TreeHistory } from '@/lib/hooks'
import { useFormat } from '../layout/use-format'
import { useWords } from '../layout/Words'
import { historyByRound } from './history-by-round'
import { ThingLine } from './ThingLine'
import { useThingWords } from './use-thing-words'
import './history.css'

/** Each round with how far the tree came in it, and everything that happened there. */
export function RoundsOfTree({ history }: { history: TreeHistory }) {
  const { history: text } = useWords()
  const format = useFormat()
  const wordsOf = useThingWords(history)
  const parts = historyByRound(history)
  if (parts.length === 0) return <p>{text.nothing}</p>
  return parts.map(({ round, things }) => {
    const title = round ? text.round(text.kinds[round.kind], round.season) : text.between
    const share = round?.state === 'begun' ? (round.share ?? null) : null
    return (
      <section key={round?.round ?? 'between'} className="round-of-tree" aria-label={title}>
        <h2>
          {title}
          {round && `: ${text.states[round.state]}`}
          {share !== null && ` (${format.share(share / 100)})`}
        </h2>
        {things.length === 0 ? (
          <p className="small">{text.nothingInRound}</p>
        ) : (
          <ul className="things">
            {things.map((thing) => (
              <ThingLine key={thing.id} thing={thing} said={wordsOf(thing)} />
            ))}
          </ul>
        )}
      </section>
    )
  })
}

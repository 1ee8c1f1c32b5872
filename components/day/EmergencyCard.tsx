'use client'

import type { ReactNode } from 'react'

import { useSelect } from '@/lib/hooks'
import { useStartWords } from '../layout/Words'
import { useTagOf } from '../sync/use-refusal-words'
import { phoneNumbersIn, telHref } from './phone-numbers'
import { inDegrees, whereWeAre } from './where-we-are'
import './emergency.css'

const lines = ['where', 'access', 'first_aid', 'meeting_point'] as const

/** What is said and done when somebody is hurt. All of it is on this phone. */
export function EmergencyCard() {
  const { help } = useStartWords()
  const tagOf = useTagOf()
  const card = useSelect((view) => view.state?.orchard.emergency ?? {})
  const where = useSelect(whereWeAre)
  const numbers = phoneNumbersIn(card.call ?? '')
  const isEmpty = Object.values(card).every((line) => line === '')

  return (
    <div className="card">
      {numbers.map((number, place) => (
        <a
          key={number}
          className={place === 0 ? 'btn is-ink is-wide dial' : 'btn is-wide dial'}
          href={telHref(number)}
        >
          {help.callFirst(number)}
        </a>
      ))}
      {numbers.length === 0 && <p className="label">{help.noNumber}</p>}
      <p className="label">{help.sayFirst}</p>
      {isEmpty ? (
        <p>{help.noCard}</p>
      ) : (
        <dl>
          {card.call && <Line term={help.call}>{card.call}</Line>}
          {lines.map(
            (key) =>
              card[key] && (
                <Line key={key} term={help[key]}>
                  {card[key]}
                </Line>
              )
          )}
          <Line term={help.coordinates}>
            {where === null ? (
              help.noCoordinates
            ) : (
              <>
                <span className="degrees num">{inDegrees(where.position)}</span>
                <span className="small">
                  {where.of === 'tree'
                    ? help.ofYourTree(tagOf(where.tree))
                    : help.ofBlock(where.block)}
                </span>
              </>
            )}
          </Line>
        </dl>
      )}
    </div>
  )
}

function Line({ term, children }: { term: string; children: ReactNode }) {
  return (
    <div>
      <dt>{term}</dt>
      <dd>{children}</dd>
    </div>
  )
}

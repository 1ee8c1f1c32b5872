'use client'

import type { ReactNode } from 'react'

import { useSelect } from '@/lib/hooks'
import { useStartWords } from '../layout/Words'
import { useTagOf } from '../sync/use-refusal-words'
import { isUnwritten, numbersToCall } from './emergency-lines'
import { telHref } from './phone-numbers'
import { inDegrees, saidDegrees, whereWeAre } from './where-we-are'
import './emergency.css'

const afterCoordinates = [
  'access',
  'call',
  'hospital',
  'first_aid',
  'first_aider',
  'meeting_point',
] as const

/** What is said and done when somebody is hurt. All of it is on this phone. */
export function EmergencyCard() {
  const { help } = useStartWords()
  const card = useSelect((view) => view.emergency)
  const zone = useSelect((view) => view.state?.orchard.timeZone ?? 'UTC')
  const numbers = numbersToCall(card ?? {}, zone)
  const [proposed] = numbers.flatMap(({ proposedBy }) => proposedBy ?? [])
  const isEmpty = card === null || isUnwritten(card)

  return (
    <div className="card">
      {numbers.map(({ number }, place) => (
        <a
          key={number}
          className={place === 0 ? 'btn is-ink is-wide dial' : 'btn is-wide dial'}
          href={telHref(number)}
        >
          {help.callFirst(number)}
        </a>
      ))}
      {numbers.length === 0 && <p className="label">{help.noNumber}</p>}
      {proposed?.kind === 'published' && (
        <p className="small">{help.numberProposed(zone, proposed.name)}</p>
      )}
      <p className="label">{help.sayFirst}</p>
      {isEmpty && <p>{card === null ? help.cardNotHere : help.noCard}</p>}
      <dl>
        {card?.where && <Line term={help.where}>{card.where}</Line>}
        <Coordinates />
        {afterCoordinates.map(
          (key) =>
            card?.[key] && (
              <Line key={key} term={help[key]}>
                {card[key]}
              </Line>
            )
        )}
      </dl>
    </div>
  )
}

/** Of my tree where somebody measured it; as they are typed, and as they are said. */
function Coordinates() {
  const { help } = useStartWords()
  const tagOf = useTagOf()
  const where = useSelect(whereWeAre)
  return (
    <Line term={help.coordinates}>
      {where === null ? (
        help.noCoordinates
      ) : (
        <>
          <span className="degrees num">{inDegrees(where.position)}</span>
          <span className="said">{saidDegrees(where.position, help.compass)}</span>
          <span className="small">
            {where.of === 'tree' ? help.ofYourTree(tagOf(where.tree)) : help.ofBlock(where.block)}
          </span>
        </>
      )}
    </Line>
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

'use client'

import type { CameIn } from '@/lib/hooks'
import { routes } from '@/lib/routes'
import { useFormat } from '../layout/use-format'
import { useNameOf, useTagOf } from '../sync/use-refusal-words'
import { Face } from '../ui/Face'
import { Tag } from '../ui/Tag'
import { lackWords } from './lack-words'
import { useLeadWords } from './use-lead-words'

/** One tree that came in otherwise: by whom, how, and what a claim would have been refused for. */
export function CameInVisit({ visit }: { visit: CameIn['visits'][number] }) {
  const { cameIn: text, people } = useLeadWords()
  const format = useFormat()
  const nameOf = useNameOf()
  const tagOf = useTagOf()
  const name = nameOf(visit.person)
  const at = new Date(visit.at)
  const how = [
    visit.result === 'also_worked' && text.alsoWorked,
    visit.late && text.late,
    visit.withoutClaim && text.withoutClaim,
  ].filter((word) => word !== false)
  return (
    <li>
      <a className="item" href={routes.map(visit.tree)}>
        <Face name={name} kind={visit.lacked.length > 0 ? 'ink' : 'plain'} />
        <span className="grow">
          <b>{name}</b>
          <span className="small">
            {[...how, `${format.date(at)}, ${format.clock(at)}`].join(' · ')}
          </span>
          {visit.lacked.length > 0 && (
            <span className="small">
              {text.lacked(format.list(lackWords(people, visit.lacked)))}
            </span>
          )}
        </span>
        <Tag>{tagOf(visit.tree)}</Tag>
      </a>
    </li>
  )
}

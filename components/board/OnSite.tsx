'use client'

import { useSelect, whoIsWhere } from '@/lib/hooks'
import { routes } from '@/lib/routes'
import { useRowWords } from '../brush/use-row-words'
import { countCrew } from '../crew/crew-order'
import { useLeadWords } from '../crew/use-lead-words'
import { useNameOf, useTagOf } from '../sync/use-refusal-words'
import { Count } from '../ui/Count'
import { Face } from '../ui/Face'
import { List, ListItem } from '../ui/List'
import { Tag } from '../ui/Tag'

/** Everybody who is counted in, and where. */
export function OnSite() {
  const { board, leadMap, brushRows } = useLeadWords()
  const rowWords = useRowWords()
  const nameOf = useNameOf()
  const tagOf = useTagOf()
  const where = useSelect(whoIsWhere)
  const { atTree, free, onBreak } = countCrew(where)
  const byName = where.toSorted((a, b) => nameOf(a.personId).localeCompare(nameOf(b.personId)))
  return (
    <section className="board-part" aria-label={board.here}>
      <h2>
        {board.here} {where.length > 0 && <Count>{where.length}</Count>}
      </h2>
      <p className="small">
        {where.length === 0 ? board.nobodyHere : leadMap.crewCounts(atTree, free, onBreak)}
      </p>
      <List label={board.here}>
        {byName.map(({ personId, state, tree, row }) => (
          <ListItem
            key={personId}
            lead={
              <Face
                name={nameOf(personId)}
                kind={tree === null && row === null ? 'free' : 'plain'}
              />
            }
            title={nameOf(personId)}
            note={
              state === 'break'
                ? leadMap.onBreak
                : row
                  ? brushRows.haulsRow(rowWords(row))
                  : undefined
            }
            end={tree !== null && <Tag>{tagOf(tree)}</Tag>}
            href={routes.person(personId)}
          />
        ))}
      </List>
    </section>
  )
}

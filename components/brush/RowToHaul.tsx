'use client'

import { type BrushRow, useSelect } from '@/lib/hooks'
import { routes } from '@/lib/routes'
import { CrewScreen } from '../layout/CrewScreen'
import { useWords } from '../layout/Words'
import { useNameOf } from '../sync/use-refusal-words'
import { useRowTag } from '../sync/use-row-tag'
import { AskAtTree } from '../tree/AskAtTree'
import { ButtonLink } from '../ui/ButtonLink'
import { List, ListItem } from '../ui/List'
import { Note } from '../ui/Note'
import { Tag } from '../ui/Tag'
import { RowFacts } from './RowFacts'
import { useRowWords } from './use-row-words'

type RowToHaulProps = {
  row: BrushRow
  others: readonly BrushRow[]
  onRow: (row: { block: number; row: number }) => void
}

/** On a phone one reads a few, not a list. */
const mostOthers = 5

/** The row to haul next: what is to be known there, and taking it or joining who hauls it. */
export function RowToHaul({ row, others, onRow }: RowToHaulProps) {
  const { brush } = useWords()
  const rowWords = useRowWords()
  const rowTag = useRowTag()
  const nameOf = useNameOf()
  const isOffline = useSelect((view) => view.signal === 'no_signal')
  const holder = row.claim && holderName(row.claim.people, nameOf)
  return (
    <CrewScreen
      side={
        <ButtonLink kind="square" icon="undo" href={routes.nextTree()}>
          {brush.toTrees}
        </ButtonLink>
      }
      step={
        row.claim ? (
          <AskAtTree
            call
            name="join_tree"
            args={{ claim: row.claim.id, part: 'helper' }}
            icon="people"
          >
            {brush.join(holder ?? '')}
          </AskAtTree>
        ) : (
          <AskAtTree
            call
            name="take_brush"
            args={{ block: row.block, row: row.row, helpers: [] }}
            icon="check"
          >
            {brush.take}
          </AskAtTree>
        )
      }
    >
      <h1>{brush.title(rowWords(row))}</h1>
      {isOffline && <Note icon="nobars">{brush.needsSignal}</Note>}
      {holder && <p>{brush.with(holder)}</p>}
      <RowFacts row={row} />
      {others.length > 0 && (
        <section>
          <h2>{brush.otherRows}</h2>
          <List label={brush.otherRows}>
            {others.slice(0, mostOthers).map((other) => (
              <ListItem
                key={`${other.block}:${other.row}`}
                title={brush.lies(other.open.length)}
                note={other.claim ? brush.with(holderName(other.claim.people, nameOf)) : undefined}
                end={<Tag>{rowTag(other)}</Tag>}
                onPress={() => onRow(other)}
              />
            ))}
          </List>
        </section>
      )}
    </CrewScreen>
  )
}

function holderName(people: Record<string, string>, nameOf: (id: string) => string): string {
  const holder = Object.keys(people).find((id) => people[id] === 'holder')
  return holder === undefined ? '' : nameOf(holder)
}

'use client'

import type { BrushRow } from '@/lib/hooks'
import { useFormat } from '../layout/use-format'
import { useWords } from '../layout/Words'
import { useNameOf, useTagOf } from '../sync/use-refusal-words'
import { Facts } from '../ui/Facts'
import { Note } from '../ui/Note'

/** What one knows before one goes into a row: what is dangerous there first, then where the wood goes. */
export function RowFacts({ row }: { row: BrushRow }) {
  const { brush, claim } = useWords()
  const format = useFormat()
  const tagOf = useTagOf()
  const nameOf = useNameOf()
  const tags = (trees: readonly number[]) => format.list(trees.map(tagOf))
  return (
    <>
      {row.overhead.map(({ tree, personId }) => (
        <Note key={tree} tone="stop" icon="warn" role="alert">
          {brush.overhead(personId === null ? claim.somebody : nameOf(personId), tagOf(tree))}
        </Note>
      ))}
      {row.closed.length > 0 && (
        <Note tone="arb" mark="arborist">
          {brush.keepAway(tags(row.closed))}
        </Note>
      )}
      {row.sick.length > 0 && (
        <Note tone="sick" mark="disease">
          {brush.sick(tags(row.sick))}
        </Note>
      )}
      <Facts
        facts={[
          { icon: 'heap', text: <b>{brush.lies(row.open.length)}</b> },
          { icon: 'right', text: row.goes ? brush.goes[row.goes] : brush.goesUnknown },
          { icon: 'helmet', text: brush.gloves },
        ]}
      />
    </>
  )
}

'use client'

import type { BrushRow } from '@/lib/hooks'
import { useLeadWords } from '../crew/use-lead-words'
import { useFormat } from '../layout/use-format'
import { useNameOf } from '../sync/use-refusal-words'
import { useRowTag } from '../sync/use-row-tag'
import { ListItem } from '../ui/List'
import { Mark } from '../ui/Mark'
import { Tag } from '../ui/Tag'

/** One row in a line: how far, who, where to; a diamond where diseased wood is to be kept apart. */
export function BrushRowItem({ row, onPress }: { row: BrushRow; onPress: () => void }) {
  const { leadMap, brushRows: text } = useLeadWords()
  const format = useFormat()
  const nameOf = useNameOf()
  const rowTag = useRowTag()
  const lying = row.open.length + row.closed.length
  const people = Object.keys(row.claim?.people ?? {}).map(nameOf)
  const notes =
    lying === 0
      ? [text.allHauled]
      : [
          text.trees(lying, row.hauled.length),
          people.length > 0 ? text.haul(format.list(people)) : text.nobody,
          row.goes ? text.goes[row.goes] : text.goesUnknown,
        ]
  const [block, number] = rowTag(row).split(' ')
  return (
    <ListItem
      lead={<Mark name={lying === 0 ? 'done' : row.claim ? 'inProgress' : 'unpruned'} size={24} />}
      title={leadMap.rowOf(block ?? '', Number(number))}
      note={notes.join(' · ')}
      end={
        <>
          {row.sick.length > 0 && <Mark name="disease" size={22} />}
          {row.closed.length > 0 && <Mark name="arborist" size={22} />}
          <Tag>{rowTag(row)}</Tag>
        </>
      }
      onPress={onPress}
    />
  )
}

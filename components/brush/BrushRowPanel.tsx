'use client'

import { useState } from 'react'

import type { BrushGoes } from '@/lib/events/state'
import { brushOfRow, brushRows, useSelect, useSend } from '@/lib/hooks'
import { AskedNote } from '../crew/AskedNote'
import { holderIn } from '../crew/claims'
import { EndClaim } from '../crew/EndClaim'
import { useAsk } from '../crew/use-ask'
import { useLeadWords } from '../crew/use-lead-words'
import { useFormat } from '../layout/use-format'
import { useNameOf, useTagOf } from '../sync/use-refusal-words'
import { useRowTag } from '../sync/use-row-tag'
import { Button } from '../ui/Button'
import { ChoiceGroup } from '../ui/ChoiceGroup'
import { Facts } from '../ui/Facts'
import { Pick } from '../ui/Pick'

const ways: readonly (BrushGoes | null)[] = ['burn', 'chip', 'bag', 'pile', null]

type BrushRowPanelProps = { block: number; row: number }

/** What a lead says about one row's wood: where it goes, that it is hauled, or that it is not. */
export function BrushRowPanel({ block, row: no }: BrushRowPanelProps) {
  const { leadMap, brushRows: text } = useLeadWords()
  const format = useFormat()
  const nameOf = useNameOf()
  const tagOf = useTagOf()
  const rowTag = useRowTag()
  const send = useSend()
  const { asked, ask } = useAsk()
  const [isEnding, setIsEnding] = useState(false)
  const row = useSelect((view) => brushOfRow(view, block, no))
  const ofBlock = useSelect((view) =>
    brushRows(view)
      .filter((other) => other.block === block)
      .map((other) => other.row)
  )
  const code = useSelect((view) => view.ground.blocks.get(block)?.code ?? '')
  if (!row) return null

  const { claim, goes, sick, closed } = row
  const lying = [...row.open, ...row.closed]
  const holder = claim && holderIn(claim)
  const tags = (trees: readonly number[]) => format.list(trees.map(tagOf))
  const direct = (rows: number[], way: BrushGoes | null) =>
    ask(send('direct_brush', { block, rows, goes: way }))
  const names = format.list(Object.keys(claim?.people ?? {}).map(nameOf))

  return (
    <section className="brush-row">
      <h2>{leadMap.rowOf(code, no)}</h2>
      <Facts
        facts={[
          { icon: 'heap', text: text.trees(lying.length, row.hauled.length) },
          { icon: 'people', text: claim ? text.haul(names) : text.nobody },
          ...(sick.length > 0 ? [{ mark: 'disease', text: text.sick(tags(sick)) } as const] : []),
          ...(closed.length > 0
            ? [{ mark: 'arborist', text: text.keepAway(tags(closed)) } as const]
            : []),
        ]}
      />
      <AskedNote asked={asked} />
      <ChoiceGroup label={text.whereTo} as="picks">
        {ways.map((way) => (
          <Pick
            key={way ?? 'none'}
            type="radio"
            low
            name={`goes-${block}-${no}`}
            checked={goes === way}
            onChange={() => void direct([no], way)}
          >
            {way ? text.goes[way] : text.notSaid}
          </Pick>
        ))}
      </ChoiceGroup>
      <div className="tree-buttons">
        {goes && ofBlock.length > 1 && (
          <Button onPress={() => void direct(ofBlock, goes)}>{text.wholeBlock}</Button>
        )}
        {lying.length > 0 && (
          <Button
            icon="check"
            onPress={() => ask(send('mark_brush', { trees: lying, hauled: true }))}
          >
            {text.markHauled}
          </Button>
        )}
        {row.hauled.length > 0 && (
          <Button
            icon="undo"
            onPress={() => ask(send('mark_brush', { trees: row.hauled, hauled: false }))}
          >
            {text.markLying}
          </Button>
        )}
        {claim && holder && (
          <Button onPress={() => setIsEnding(true)}>{text.endHauling(nameOf(holder))}</Button>
        )}
      </div>
      {claim && holder && (
        <EndClaim
          open={isEnding}
          isRow
          claimId={claim.id}
          name={nameOf(holder)}
          tag={rowTag(row)}
          onClose={() => setIsEnding(false)}
        />
      )}
    </section>
  )
}

'use client'

import { useState } from 'react'

import type { Inventory } from '@/lib/domain/orchard/inventory-placed'
import { treeTag } from '@/lib/text/tree-name'
import { useLeadWords } from '../crew/use-lead-words'
import { Button } from '../ui/Button'
import { CheckRow } from '../ui/CheckRow'
import { Panel } from '../ui/Panel'
import { Tag } from '../ui/Tag'
import type { Reading } from './reading'
import type { SaidDraft } from './use-bring-in'
import { useChangeWords } from './use-change-words'

type ChangedTreesProps = { reading: Reading; existing: Inventory; said: SaidDraft }

const atOnce = 30

/** Trees of the orchard that the file tells differently, each with what it was and would be. */
export function ChangedTrees({ reading: { changed }, existing, said }: ChangedTreesProps) {
  const { bringIn: text } = useLeadWords()
  const wordsOf = useChangeWords(existing)
  const [shown, setShown] = useState(atOnce)
  const ticked = new Set(said.value.ticked)
  const write = (trees: readonly number[]) => said.write({ ...said.value, ticked: [...trees] })
  const tick = (no: number, isOn: boolean) =>
    write(isOn ? [...ticked, no] : [...ticked].filter((one) => one !== no))
  const left = changed.length - shown
  return (
    <Panel title={text.changesTitle(changed.length)}>
      <div className="stack">
        <p>{text.changesLead}</p>
        <div className="yes-no">
          <Button onPress={() => write(changed.map(({ tree }) => tree.no))}>{text.tickAll}</Button>
          <Button onPress={() => write([])}>{text.tickNone}</Button>
        </div>
        <p className="label" role="status">
          {text.ticked(changed.filter(({ tree }) => ticked.has(tree.no)).length, changed.length)}
        </p>
        <div>
          {changed.slice(0, shown).map((change) => (
            <CheckRow
              key={change.tree.no}
              checked={ticked.has(change.tree.no)}
              onChange={(isOn) => tick(change.tree.no, isOn)}
              hint={wordsOf(change).join(' · ')}
            >
              <Tag>{treeTag(change.to)}</Tag>
            </CheckRow>
          ))}
        </div>
        {left > 0 && (
          <Button onPress={() => setShown(shown + 10 * atOnce)}>
            {text.showMore(Math.min(left, 10 * atOnce))}
          </Button>
        )}
      </div>
    </Panel>
  )
}

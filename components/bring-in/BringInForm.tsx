'use client'

import { useId } from 'react'

import type { Encoding } from '@/lib/domain/orchard/file-text'
import { inventoryArgs } from '@/lib/domain/orchard/inventory-args'
import type { Inventory } from '@/lib/domain/orchard/inventory-placed'
import { type Draft, useSend } from '@/lib/hooks'
import { AskedNote } from '../crew/AskedNote'
import { useAsk } from '../crew/use-ask'
import { useLeadWords } from '../crew/use-lead-words'
import { Button } from '../ui/Button'
import { Panel } from '../ui/Panel'
import { Why } from '../ui/Why'
import { BringInMap } from './BringInMap'
import { type ChosenFile, nothingSaid } from './bring-in-draft'
import { ChangedTrees } from './ChangedTrees'
import { ColumnList } from './ColumnList'
import { CultivarsTold } from './CultivarsTold'
import { hazardsIn } from './hazards-in'
import { NewBlocks } from './NewBlocks'
import type { Reading } from './reading'
import { SpeciesChoices } from './SpeciesChoices'
import type { SaidDraft } from './use-bring-in'
import { WhatComesIn } from './WhatComesIn'
import { WhatWasRead } from './WhatWasRead'
import { WrongRows } from './WrongRows'
import { whyNot } from './why-not'

/** Names, in every language. */
const encodingNames: Record<Encoding, string> = {
  'utf-8': 'UTF-8',
  'utf-16': 'UTF-16',
  'windows-1252': 'Windows-1252',
}

type BringInFormProps = {
  file: Draft<ChosenFile | null>
  said: SaidDraft
  name: string
  existing: Inventory
  reading: Reading
}

/** What was understood of a file, what would come in, and the button that brings it in. */
export function BringInForm({ file, said, name, existing, reading }: BringInFormProps) {
  const { bringIn: text } = useLeadWords()
  const send = useSend()
  const whyId = useId()
  const { asked, isAsking, ask } = useAsk()
  const { table, trees, changed, newBlocks, strangeSpecies } = reading
  const ticked = new Set(said.value.ticked)
  const chosen = changed.filter(({ tree }) => ticked.has(tree.no))
  const lacks = whyNot(reading, chosen.length, said.value)

  const drop = () => {
    void file.writeNow(null)
    void said.writeNow(nothingSaid)
  }
  const bringIn = () => {
    const done = {
      trees: trees.length,
      changed: chosen.length,
      leftOut: reading.isLeftOut ? reading.wrongLines.length : 0,
      hazards: hazardsIn(reading.rows),
      flagged: 0,
    }
    void ask(send('bring_in_trees', inventoryArgs(reading, existing, chosen)), () => {
      void said.writeNow({ ...nothingSaid, done })
      void file.writeNow(null)
    })
  }
  const label =
    chosen.length === 0
      ? text.bringIn(trees.length)
      : trees.length === 0
        ? text.change(chosen.length)
        : text.bringInAndChange(trees.length, chosen.length)

  return (
    <>
      <Panel title={text.understood(name, table.records.length)}>
        <div className="stack">
          <p>
            {[text.kinds[table.separator ?? 'geojson'], encodingNames[table.encoding]].join(', ')}.{' '}
            {text.kept}
          </p>
          <WhatWasRead reading={reading} />
          <Button onPress={drop}>{text.another}</Button>
        </div>
      </Panel>
      <ColumnList reading={reading} said={said} />
      {strangeSpecies.length > 0 && <SpeciesChoices strange={strangeSpecies} said={said} />}
      {newBlocks.length > 0 && <NewBlocks blocks={newBlocks} said={said} />}
      <WhatComesIn reading={reading} />
      {reading.problems.length > 0 && <WrongRows reading={reading} said={said} />}
      {changed.length > 0 && <ChangedTrees reading={reading} existing={existing} said={said} />}
      <CultivarsTold reading={reading} existing={existing} />
      {(reading.problems.length === 0 || reading.isLeftOut) &&
        trees.length + changed.length > 0 && (
          <BringInMap reading={reading} existing={existing} ticked={ticked} />
        )}
      <div className="bring-in-step">
        <AskedNote asked={asked} />
        {lacks !== null && <Why id={whyId}>{text[lacks.code](lacks.count)}</Why>}
        {lacks !== null ? (
          <Button kind="call" state="off" describedBy={whyId}>
            {label}
          </Button>
        ) : (
          <Button kind="call" state={isAsking ? 'waiting' : 'ready'} onPress={bringIn}>
            {isAsking ? text.bringing : label}
          </Button>
        )}
      </div>
    </>
  )
}

'use client'

import { keptHabits } from '@/lib/domain/orchard/inventory-changes'
import type { Inventory } from '@/lib/domain/orchard/inventory-placed'
import { useLeadWords } from '../crew/use-lead-words'
import { Facts } from '../ui/Facts'
import { Note } from '../ui/Note'
import { Panel } from '../ui/Panel'
import { hazardsIn } from './hazards-in'
import type { Reading } from './reading'

/** How many trees, blocks and cultivars are new, and what is here already. */
export function WhatComesIn({ reading, existing }: { reading: Reading; existing: Inventory }) {
  const { bringIn: text } = useLeadWords()
  const { trees, blocks, cultivars, same, changed, rows } = reading
  const unplaced = trees.filter(({ position }) => position === null).length
  const hazards = hazardsIn(rows).length
  const kept = keptHabits(rows, existing.cultivars).length
  const facts = [
    { icon: 'plus', count: trees.length, says: text.newTrees },
    { icon: 'plus', count: blocks.length, says: text.newBlocks },
    { icon: 'plus', count: cultivars.length, says: text.newCultivars },
    { icon: 'check', count: same, says: text.sameTrees },
    { icon: 'edit', count: changed.length, says: text.differing },
    { icon: 'info', count: unplaced, says: text.notSurveyed },
    { icon: 'warn', count: hazards, says: text.hazardsTitle },
  ] as const
  return (
    <Panel title={text.comesIn}>
      <Facts
        facts={facts
          .filter(({ count }) => count > 0)
          .map(({ icon, count, says }) => ({ icon, text: says(count) }))}
      />
      {kept > 0 && <Note>{text.habitsKept(kept)}</Note>}
    </Panel>
  )
}

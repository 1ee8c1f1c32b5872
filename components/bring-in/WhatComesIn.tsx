'use client'

import { useLeadWords } from '../crew/use-lead-words'
import { Facts } from '../ui/Facts'
import { Panel } from '../ui/Panel'
import { hazardsIn } from './hazards-in'
import type { Reading } from './reading'

/** How many trees, blocks and cultivars are new, and what is here already. */
export function WhatComesIn({ reading }: { reading: Reading }) {
  const { bringIn: text } = useLeadWords()
  const { trees, blocks, cultivars, same, changed, rows, wrongLines, isLeftOut } = reading
  const unplaced = trees.filter(({ position }) => position === null).length
  const hazards = hazardsIn(rows).length
  const facts = [
    { icon: 'plus', count: trees.length, says: text.newTrees },
    { icon: 'plus', count: blocks.length, says: text.newBlocks },
    { icon: 'plus', count: cultivars.length, says: text.newCultivars },
    { icon: 'check', count: same, says: text.sameTrees },
    { icon: 'edit', count: changed.length, says: text.differing },
    { icon: 'info', count: unplaced, says: text.notSurveyed },
    { icon: 'cross', count: isLeftOut ? wrongLines.length : 0, says: text.stayOutside },
    { icon: 'warn', count: hazards, says: text.hazardsTitle },
  ] as const
  return (
    <Panel title={text.comesIn}>
      <Facts
        facts={facts
          .filter(({ count }) => count > 0)
          .map(({ icon, count, says }) => ({ icon, text: says(count) }))}
      />
    </Panel>
  )
}

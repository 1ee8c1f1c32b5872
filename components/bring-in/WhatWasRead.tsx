'use client'

import { type PassedOver, passedReasons } from '@/lib/domain/orchard/table-rows'
import { useLeadWords } from '../crew/use-lead-words'
import { Facts } from '../ui/Facts'
import type { Reading } from './reading'

const mostNamed = 4

/** What was made of the table before it was read: nothing of it is passed over without a word. */
export function WhatWasRead({ reading: { table, matching, filled } }: { reading: Reading }) {
  const { inventory } = useLeadWords()
  const nameOf = ({ line, text }: PassedOver) => inventory.lineSays(line, text.slice(0, 40))
  const sentences = passedReasons.flatMap((why) => {
    const lines = table.passedOver.filter((one) => one.why === why)
    const named = lines.slice(0, mostNamed).map(nameOf).join(', ')
    const more = lines.length > mostNamed ? `, + ${lines.length - mostNamed}` : ''
    return lines.length === 0 ? [] : [inventory.passed[why](`${named}${more}`)]
  })
  const isByTitles = table.titles.size > 0 && matching.every(({ column }) => column !== 'block')
  const said = [
    ...sentences,
    ...(isByTitles ? [inventory.blocksFromTitles] : []),
    ...filled.map(({ head, rows }) => inventory.filledDown(head, rows)),
  ]
  return said.length > 0 && <Facts facts={said.map((text) => ({ icon: 'info', text }))} />
}

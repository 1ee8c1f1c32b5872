/** From what the manager chose and said to what would come in. */

import { longestCode } from '@/lib/domain/orchard/block-codes'
import { type InventoryPlan, planInventory } from '@/lib/domain/orchard/inventory'
import type { BlockSettings } from '@/lib/domain/orchard/inventory-contents'
import type { Inventory } from '@/lib/domain/orchard/inventory-placed'
import { calledKey } from '@/lib/domain/orchard/inventory-reader'
import type { Table } from '@/lib/domain/orchard/inventory-table'
import { speciesIn } from '@/lib/domain/orchard/inventory-words'
import { type Match, matchColumns } from '@/lib/domain/orchard/match-columns'
import type { Block } from '@/lib/domain/orchard/types'

import { noPlace, type Said, type TypedPlace } from './bring-in-draft'
import { settingsOf, type Units } from './typed-place'

export type Reading = InventoryPlan & {
  table: Table
  matching: readonly Match[]
  /** Words for a kind of tree that are not known, as the file has them. */
  strangeSpecies: string[]
  newBlocks: NewBlock[]
  /** Lines something is wrong with, besides what `strangeSpecies` asks. */
  wrongLines: number[]
  /** Somebody said that just these stay outside. */
  isLeftOut: boolean
}

export type NewBlock = {
  label: string
  block: Block
  trees: number
  hasPositions: boolean
  typed: TypedPlace
  isCodeWrong: boolean
  isPlaceWrong: boolean
}

type Question = { table: Table; said: Said; existing: Inventory; thisYear: number; units: Units }

export function readingOf({ table, said, existing, thisYear, units }: Question): Reading {
  const matching = said.matching ?? matchColumns(table, units)
  const question = {
    table,
    matching,
    thisYear,
    existing,
    speciesCalled: new Map(Object.entries(said.species)),
    onlyBlock: said.onlyBlock || 'A',
    codes: said.codes,
    blockSettings: settings(said.places, units),
  }
  const whole = planInventory(question)
  const strangeSpecies = strangeIn(table, matching, said)
  const speciesHead = table.heads[matching.findIndex(({ column }) => column === 'species')]
  // What is asked with a choice below is not told row by row as well.
  const problems = whole.problems.filter(
    ({ code, column }) => !(code === 'not_one_of' && column === speciesHead)
  )
  const wrongLines = [...new Set(problems.map(({ line }) => line))]
  const leftOut = new Set(said.leftOut)
  const isLeftOut = wrongLines.length > 0 && wrongLines.every((line) => leftOut.has(line))
  const plan = isLeftOut ? planInventory({ ...question, leftOut }) : whole
  return {
    ...plan,
    problems,
    table,
    matching,
    strangeSpecies,
    newBlocks: newBlocksOf(plan, existing.blocks, said, units),
    wrongLines,
    isLeftOut,
  }
}

function settings(
  places: Readonly<Record<string, TypedPlace>>,
  units: Units
): Record<string, BlockSettings> {
  const known = Object.entries(places).map(([label, place]) => [
    label,
    settingsOf(place, units) ?? {},
  ])
  return Object.fromEntries(known) as Record<string, BlockSettings>
}

function strangeIn({ records }: Table, matching: readonly Match[], { species }: Said): string[] {
  const index = matching.findIndex(({ column }) => column === 'species')
  if (index === -1) return []
  const strange = new Map<string, string>()
  for (const { fields } of records) {
    const word = fields[index] ?? ''
    const key = calledKey(word)
    if (word !== '' && !strange.has(key) && speciesIn(word) === null) strange.set(key, word)
  }
  // What was chosen stays, so that it can be chosen otherwise.
  return [...strange.values()].filter((word) => [...word].length <= 60 || species[calledKey(word)])
}

/** Also those that somebody gave the letters of a block that is here: they must be able to give them others. */
function newBlocksOf(
  plan: InventoryPlan,
  existing: readonly Block[],
  said: Said,
  units: Units
): NewBlock[] {
  const byLabel = new Map<string, { code: string; trees: number; hasPositions: boolean }>()
  for (const { label, block, position, existing: tree } of plan.rows) {
    if (tree && said.codes[label] === undefined) continue
    const known = byLabel.get(label) ?? { code: block, trees: 0, hasPositions: false }
    const hasPositions = known.hasPositions || position !== null
    byLabel.set(label, { ...known, trees: known.trees + 1, hasPositions })
  }
  const isHere = (code: string) => existing.some((one) => one.code === code)
  const labels = [...byLabel].filter(
    ([label, { code }]) => !isHere(code) || said.codes[label] !== undefined
  )
  return labels.flatMap(([label, { code, ...counted }]) => {
    const block = [...plan.blocks, ...existing].find((one) => one.code === code)
    if (!block) return []
    const typed = said.places[label] ?? noPlace
    const isShared = labels.some(([other, { code: theirs }]) => other !== label && theirs === code)
    return [
      {
        label,
        block,
        ...counted,
        typed,
        isCodeWrong: isHere(code) || isShared || [...code].length > longestCode,
        isPlaceWrong: !counted.hasPositions && settingsOf(typed, units) === null,
      },
    ]
  })
}

/** Rows of a file put where they belong: at a tree that the orchard has, or at a place of its own. */

import { blockCodes } from './block-codes'
import { folded } from './inventory-columns'
import type { InventoryRow } from './inventory-row'
import { sizeClassOf } from './size-class'
import type { Block, Cultivar, Life, Species, Tree } from './types'

export type Inventory = { blocks: Block[]; cultivars: Cultivar[]; trees: Tree[] }
export const nothingYet: Inventory = { blocks: [], cultivars: [], trees: [] }

/** What the tree will be: what the row says, else what is known of it. */
export type PlacedRow = Omit<InventoryRow, 'block' | 'blockName' | 'place' | 'asksSaw' | 'life'> & {
  /** The tree that stands there; null: a new one. */
  existing: Tree | null
  /** What the file calls its block. */
  label: string
  /** The code on the plate. */
  block: string
  blockName: string
  place: number
  asksSaw: boolean
  life: Life
}

export type Placing = {
  existing: Inventory
  /** The block of all, where the file names none. */
  onlyBlock: string
  /** Codes that a person chose instead of the proposed ones, by what the file calls the block. */
  codes: Readonly<Record<string, string>>
}

export function placedRows(rows: readonly InventoryRow[], placing: Placing): PlacedRow[] {
  const { existing, onlyBlock, codes } = placing
  const labels = rows.map(({ block }) => block ?? onlyBlock)
  const called = blockCodes(labels, existing.blocks)
  const counted = new Map<string, number>()
  const located = rows.map((row, index) => {
    const label = labels[index] ?? onlyBlock
    const { code = label, name = label } = called.get(label) ?? {}
    const block = codes[label] || code
    const ofRow = `${block}|${row.row}`
    const next = (counted.get(ofRow) ?? 0) + 1
    counted.set(ofRow, next)
    return { row, label, block, name, place: row.place ?? next }
  })
  const given = new Map<string, string>()
  for (const { row, block } of located) {
    if (row.blockName !== null && !given.has(block)) given.set(block, row.blockName)
  }
  const isPlanted = new Set(
    located
      .filter(({ row }) => row.life !== 'removed')
      .map((it) => keyOf(it.block, it.row.row, it.place))
  )
  const find = finderOf(existing)
  const spelled = spellingOf(existing.cultivars)
  const names = new Map(existing.cultivars.map(({ no, name }) => [no, name]))
  return located.map(({ row, label, block, name, place }) => {
    const key = keyOf(block, row.row, place)
    const tree = find(key, row.life === 'removed', isPlanted.has(key))
    const facts = tree ? overlaid(row, tree, names) : asNew(row)
    return {
      ...facts,
      cultivar: facts.cultivar && spelled(facts.species, facts.cultivar),
      line: row.line,
      existing: tree,
      label,
      block,
      blockName: row.blockName ?? given.get(block) ?? name,
      row: row.row,
      place,
      habit: row.habit,
      buds: row.buds,
      hazard: row.hazard,
    }
  })
}

export function keyOf(block: string, row: number, place: number): string {
  return `${block}|${row}|${place}`
}

/** A removed tree shares its place with the one planted after it; each is found once. */
function finderOf({ blocks, trees }: Inventory) {
  const codes = new Map(blocks.map(({ no, code }) => [no, code]))
  const here = new Map<string, Tree>()
  const gone = new Map<string, Tree[]>()
  for (const tree of trees) {
    const key = keyOf(codes.get(tree.block) ?? '', tree.row, tree.place)
    if (tree.life === 'removed') gone.set(key, [...(gone.get(key) ?? []), tree])
    else here.set(key, tree)
  }
  return (key: string, isRemoved: boolean, isPlantedAnew: boolean): Tree | null => {
    if (!isRemoved) return here.get(key) ?? null
    return gone.get(key)?.shift() ?? (isPlantedAnew ? null : (here.get(key) ?? null))
  }
}

type Facts = Omit<
  PlacedRow,
  | 'line'
  | 'existing'
  | 'label'
  | 'block'
  | 'blockName'
  | 'row'
  | 'place'
  | 'habit'
  | 'buds'
  | 'hazard'
>

/** Empty means: species other (at a gap only), no saw, standing, and else not known. */
function asNew(row: InventoryRow): Facts {
  const life = row.life ?? 'standing'
  return {
    ...row,
    life,
    species: row.species ?? (life === 'gap' ? 'other' : null),
    sizeClass: row.sizeClass ?? sizeClassOf(row),
    asksSaw: row.asksSaw ?? false,
  }
}

/** An empty field never takes away what is known. */
function overlaid(row: InventoryRow, tree: Tree, names: ReadonlyMap<number, string>): Facts {
  const species = row.species ?? tree.species
  const known = tree.cultivar === null || species !== tree.species ? null : names.get(tree.cultivar)
  const trunkCm = row.trunkCm ?? tree.trunkCm
  const heightCm = row.heightCm ?? tree.heightCm
  // A size that followed from the measures goes on following from them.
  const follows = tree.sizeClass === sizeClassOf(tree)
  return {
    species,
    cultivar: row.cultivar ?? known ?? null,
    plantedYear: row.plantedYear ?? tree.plantedYear,
    trunkCm,
    heightCm,
    sizeClass: row.sizeClass ?? (follows ? sizeClassOf({ trunkCm, heightCm }) : tree.sizeClass),
    asksSaw: row.asksSaw ?? tree.asksSaw,
    life: row.life ?? tree.life,
    position: row.position ?? tree.position,
  }
}

/** One spelling a cultivar: the orchard's, else the first of the file. */
function spellingOf(cultivars: readonly Cultivar[]) {
  const first = new Map(cultivars.map(({ species, name }) => [`${species}|${folded(name)}`, name]))
  const exact = new Set(cultivars.map(({ species, name }) => `${species}|${name}`))
  return (species: Species | null, name: string): string => {
    if (exact.has(`${species}|${name}`)) return name
    const key = `${species}|${folded(name)}`
    const known = first.get(key)
    if (known === undefined) first.set(key, name)
    return known ?? name
  }
}

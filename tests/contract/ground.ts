/** The trees of the contract test: the low apples every test orchard has, and a block of all sorts, by day or by night. */

import type { Block, Position, Tree } from '@/lib/domain/orchard/types'
import type { Ground } from '@/lib/events/ground'
import { type Hour, longitudeAt } from '../support/sun-place'

type Sort = Pick<Tree, 'species' | 'heightCm' | 'asksSaw' | 'life'>

const low: Sort = { species: 'apple', heightCm: 220, asksSaw: false, life: 'standing' }
const sorts: Sort[] = [
  { ...low, heightCm: 420 },
  { ...low, heightCm: null },
  { ...low, asksSaw: true },
  { ...low, species: 'cherry' },
  { ...low, species: 'cherry', heightCm: 500, asksSaw: true },
  { ...low, species: 'pear' },
  { ...low, life: 'dead' },
  low,
]

/** What hour it is there; null: nobody knows where it is. */
export const hours = ['noon', 'noon', 'midnight', 'sunset in 20 minutes', null] as const

/** To be brought in after the forty low apples of `newOrchard`, which are trees 1 to 40 of block 1. */
export function allSorts(firstTree: Position | null) {
  const place = firstTree && { firstLatE7: 0, firstLonE7: Math.round(firstTree.lon * 1e7) }
  return {
    blocks: [{ code: 'B', name: 'All Sorts', rowSpacingM: 5, treeSpacingM: 4, ...place }],
    cultivars: [],
    trees: sorts.map((sort, i) => ({ block: 'B', row: 1, place: 1 + i, ...sort })),
  }
}

export function placeAt(hour: Hour | null): Position | null {
  return hour && { lat: 0, lon: Number(longitudeAt(hour, Date.now()).toFixed(7)) }
}

/** Few, so that people get in each other's way. */
export const treeNumbers = [1, 2, 3, 21, 22, 41, 42, 43, 44, 45, 46, 47, 48]

const block = { bearingDeg: null, firstTree: null, taggedEnd: 'low' } as const
const blocks: Block[] = [
  { ...block, no: 1, code: 'A', name: 'Long Piece', rowSpacingM: 6, treeSpacingM: 5 },
  { ...block, no: 2, code: 'B', name: 'All Sorts', rowSpacingM: 5, treeSpacingM: 4 },
]

const tree = { cultivar: null, sizeClass: null, plantedYear: null, trunkCm: null, position: null }
const trees: Tree[] = [
  ...Array.from({ length: 40 }, (_, i) => ({
    ...tree,
    ...low,
    no: 1 + i,
    block: 1,
    row: 1 + Math.floor(i / 20),
    place: 1 + (i % 20),
  })),
  ...sorts.map((sort, i) => ({ ...tree, ...sort, no: 41 + i, block: 2, row: 1, place: 1 + i })),
]

export const ground: Ground = {
  blocks: new Map(blocks.map((each) => [each.no, each])),
  trees: new Map(trees.map((each) => [each.no, each])),
}

/** The same, somewhere. */
export function groundIn(firstTree: Position | null): Ground {
  const there = blocks.map((each) => (each.no === 2 ? { ...each, firstTree } : each))
  return { ...ground, blocks: new Map(there.map((each) => [each.no, each])) }
}

/** Which trees to look at round the sick ones, those most at risk first, and in what order to walk. */

import type { Block, Species, Tree } from '../orchard/types'
import { shareDisease } from './hosts'
import { type Neighbours, neighboursAt } from './neighbours'

/** A tree that is flagged for disease. */
export type Case = { no: number; sign: string; confirmed: boolean }

/**
 * Of a tree's kind and the sick trees near it: the same kind; another one that a source names for
 * the same sign; or neither, which is looked at last.
 */
export type Kin = 'same_kind' | 'shares_disease' | 'other_kind'

export type ToScout = {
  no: number
  /** 1: beside a sick tree; 2: one tree further. */
  ring: number
  sickNeighbours: number
  kin: Kin
  /** To the nearest sick tree within its block by rows and spacing. Null: that is in another one. */
  nearestM: number | null
}

type Around = {
  trees: readonly Tree[]
  blocks: readonly Block[]
  /** Of the trees in this order. */
  neighbours: Neighbours
  cases: readonly Case[]
  /** Flagged for disease, whatever the sign: somebody has looked at them. */
  known: ReadonlySet<number>
  rings: 1 | 2
}

/** The most at risk first: its own kind, then near, then many sick neighbours. */
export function treesToScout(around: Around): ToScout[] {
  const { trees, neighbours, known } = around
  const casesAt = new Map<number, Case[]>()
  const atOf = new Map(trees.map(({ no }, at) => [no, at]))
  for (const one of around.cases) {
    const at = atOf.get(one.no)
    if (at !== undefined) casesAt.set(at, [...(casesAt.get(at) ?? []), one])
  }
  const sickNear = sickWithin(neighbours, [...casesAt.keys()], around.rings)
  return [...sickNear]
    .flatMap(([at, { ring, from }]): ToScout[] => {
      const tree = trees[at]
      if (tree?.life !== 'standing' || known.has(tree.no)) return []
      const near = from.flatMap((sickAt) => casesAt.get(sickAt) ?? [])
      const sickTrees = from.flatMap((sickAt) => trees[sickAt] ?? [])
      return [
        {
          no: tree.no,
          ring,
          sickNeighbours: ring === 1 ? from.length : 0,
          kin: kinOf(tree.species, near, (no) => trees[atOf.get(no) ?? -1]?.species),
          nearestM: nearestM(tree, sickTrees, around.blocks),
        },
      ]
    })
    .toSorted(byRisk)
}

const kinOrder: Record<Kin, number> = { same_kind: 0, shares_disease: 1, other_kind: 2 }

function byRisk(a: ToScout, b: ToScout): number {
  return (
    kinOrder[a.kin] - kinOrder[b.kin] ||
    a.ring - b.ring ||
    b.sickNeighbours - a.sickNeighbours ||
    (a.nearestM ?? 1e6) - (b.nearestM ?? 1e6) ||
    a.no - b.no
  )
}

/** Up one row and down the next, block by block, as one walks an alley. */
export function inWalkingOrder<Place extends { no: number }>(
  places: readonly Place[],
  trees: ReadonlyMap<number, Pick<Tree, 'block' | 'row' | 'place'>>
): Place[] {
  const rows = new Map<string, { block: number; row: number; own: { one: Place; at: number }[] }>()
  for (const one of places) {
    const tree = trees.get(one.no)
    if (!tree) continue
    const key = `${tree.block} ${tree.row}`
    const row = rows.get(key) ?? { block: tree.block, row: tree.row, own: [] }
    row.own.push({ one, at: tree.place })
    rows.set(key, row)
  }
  return [...rows.values()]
    .toSorted((a, b) => a.block - b.block || a.row - b.row)
    .flatMap(({ own }, walked) =>
      own.toSorted((a, b) => (walked % 2 === 0 ? a.at - b.at : b.at - a.at)).map(({ one }) => one)
    )
}

type Near = { ring: number; from: readonly number[] }

/** Each tree near a sick one, with the nearest ring and the sick trees that put it there. */
function sickWithin(
  neighbours: Neighbours,
  sick: readonly number[],
  rings: number
): ReadonlyMap<number, Near> {
  const isSick = new Set(sick)
  const near = new Map<number, Near>()
  let edge = new Map(sick.map((at) => [at, [at]]))
  for (let ring = 1; ring <= rings; ring++) {
    const found = new Map<number, number[]>()
    for (const [at, from] of edge)
      for (const other of neighboursAt(neighbours, at)) {
        if (isSick.has(other) || near.has(other)) continue
        const known = found.get(other) ?? []
        found.set(other, [...new Set([...known, ...from])])
      }
    for (const [at, from] of found) near.set(at, { ring, from })
    edge = found
  }
  return near
}

function kinOf(
  species: Species,
  near: readonly Case[],
  speciesOf: (no: number) => Species | undefined
): Kin {
  const kinds = near.flatMap((one) => {
    const sick = speciesOf(one.no)
    return sick ? [{ sick, sign: one.sign }] : []
  })
  if (kinds.some(({ sick }) => sick === species)) return 'same_kind'
  return kinds.some(({ sick, sign }) => shareDisease(sign, sick, species))
    ? 'shares_disease'
    : 'other_kind'
}

function nearestM(tree: Tree, sick: readonly Tree[], blocks: readonly Block[]): number | null {
  const block = blocks.find(({ no }) => no === tree.block)
  const metres = sick.flatMap((other) =>
    block && other.block === tree.block
      ? [
          Math.hypot(
            (other.row - tree.row) * block.rowSpacingM,
            (other.place - tree.place) * block.treeSpacingM
          ),
        ]
      : []
  )
  return metres.length === 0 ? null : Math.min(...metres)
}

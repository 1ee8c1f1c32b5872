/**
 * Which trees of an orchard stand beside each other: along the row, across the alley, and over
 * the corner. Within a block rows and places say it, since a phone's position is off by more than
 * a tree's spacing; a gap or a missing row lets nothing through. Where rows do not start level, the
 * positions of a whole row say which place lies beside which. Between blocks only positions can.
 */

import { groupBy } from '@/lib/util/group-by'

import { placesOf } from '../orchard/around'
import { offsetFrom } from '../orchard/distance'
import type { Block, Tree } from '../orchard/types'
import { groundOf } from '../planning/ground'
import { type Join, type Neighbours, neighboursFrom } from './neighbours'

/** Of trees in the order given; all of them stand. */
export function besideEachOther(trees: readonly Tree[], blocks: readonly Block[]): Neighbours {
  const joins = [...joinsInBlocks(trees, blocks), ...joinsBetweenBlocks(trees, blocks)]
  return neighboursFrom(trees.length, joins)
}

type Row = {
  row: number
  /** Place → the tree's number in the list. */
  at: ReadonlyMap<number, number>
  /** Where place 0 would be, in places. */
  begins: number
}

function joinsInBlocks(trees: readonly Tree[], blocks: readonly Block[]): Join[] {
  const { spots } = groundOf(trees, blocks)
  const byBlock = groupBy(trees.keys(), (at) => trees[at]?.block ?? 0)
  return blocks.flatMap(({ no, treeSpacingM }) => {
    const rows = rowsOf(byBlock.get(no) ?? [])
    return [...rows.values()].flatMap((own) => {
      const next = rows.get(own.row + 1)
      return [...alongRow(own), ...(next ? acrossRows(own, next) : [])]
    })

    function rowsOf(own: readonly number[]): ReadonlyMap<number, Row> {
      const byRow = groupBy(own, (at) => trees[at]?.row ?? 0)
      return new Map([...byRow].map(([row, inRow]) => [row, { row, ...rowOf(inRow) }]))
    }

    function rowOf(inRow: readonly number[]): Omit<Row, 'row'> {
      const begins = inRow.map((at) => {
        const tree = trees[at]
        const alongM = spots.get(tree?.no ?? 0)?.alongM ?? 0
        return alongM / treeSpacingM - (tree?.place ?? 0)
      })
      return { at: new Map(inRow.map((at) => [trees[at]?.place ?? 0, at])), begins: median(begins) }
    }
  })
}

function alongRow({ at }: Row): Join[] {
  return [...at].flatMap(([place, one]): Join[] => {
    const other = at.get(place + 1)
    return other === undefined ? [] : [[one, other]]
  })
}

function acrossRows(row: Row, next: Row): Join[] {
  const shift = Math.round(row.begins - next.begins)
  return [...row.at].flatMap(([place, one]) =>
    [-1, 0, 1].flatMap((corner): Join[] => {
      const other = next.at.get(place + shift + corner)
      return other === undefined ? [] : [[one, other]]
    })
  )
}

/** As near as the next row of the wider block, and a little. */
function joinsBetweenBlocks(trees: readonly Tree[], blocks: readonly Block[]): Join[] {
  const places = placesOf(trees, blocks)
  const origin = places.values().next().value?.position
  if (!origin || blocks.length < 2) return []
  const reachM = 1.2 * Math.max(...blocks.map((b) => Math.max(b.rowSpacingM, b.treeSpacingM)))
  const located = trees.flatMap(({ no, block }, at) => {
    const place = places.get(no)
    return place ? [{ at, block, ...offsetFrom(origin, place.position) }] : []
  })
  const cellOf = (metres: number) => Math.floor(metres / reachM)
  const cells = groupBy(located, ({ eastM, northM }) => `${cellOf(eastM)} ${cellOf(northM)}`)
  return located.flatMap((one) => {
    const near = [-1, 0, 1].flatMap((east) =>
      [-1, 0, 1].flatMap(
        (north) => cells.get(`${cellOf(one.eastM) + east} ${cellOf(one.northM) + north}`) ?? []
      )
    )
    return near.flatMap((other): Join[] => {
      const isNear = Math.hypot(other.eastM - one.eastM, other.northM - one.northM) <= reachM
      return isNear && other.block !== one.block && other.at > one.at ? [[one.at, other.at]] : []
    })
  })
}

function median(values: readonly number[]): number {
  return values.toSorted((a, b) => a - b)[Math.floor(values.length / 2)] ?? 0
}

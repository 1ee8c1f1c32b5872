/** New row and place numbers for the trees of a block. A tree's own number is never touched. */

import { groupBy } from '@/lib/util/group-by'

import type { Tree } from './types'

export type Numbering = {
  /** The number of the row that comes first, and of the place in it. */
  firstRow: number
  firstPlace: number
  /** From the other side: what is the last row now becomes the first. */
  rowsBack: boolean
  /** From the other end of each row. */
  placesBack: boolean
  /** Every other row is counted back, as one walks them. */
  serpentine: boolean
  /** Numbers that nobody has are closed up; else the distance between numbers stays. */
  closeUp: boolean
}

export type Numbered = Pick<Tree, 'no' | 'row' | 'place'>

/** Trees that were removed keep what they had: their place may have a new tree. */
export function renumbered(trees: readonly Tree[], numbering: Numbering): Numbered[] {
  const rows = groupBy(
    trees.filter(({ life }) => life !== 'removed'),
    ({ row }) => row
  )
  const rowNumbers = newNumbers([...rows.keys()], numbering.firstRow, {
    back: numbering.rowsBack,
    closeUp: numbering.closeUp,
  })
  return [...rows].flatMap(([row, own]) => {
    const newRow = rowNumbers.get(row) ?? row
    const isOdd = (newRow - numbering.firstRow) % 2 === 1
    const places = newNumbers(
      own.map(({ place }) => place),
      numbering.firstPlace,
      {
        back: numbering.placesBack !== (numbering.serpentine && isOdd),
        closeUp: numbering.closeUp,
      }
    )
    return own.map(({ no, place }) => ({ no, row: newRow, place: places.get(place) ?? place }))
  })
}

/** From the number as it is to the number as it will be. */
function newNumbers(
  numbers: readonly number[],
  first: number,
  { back, closeUp }: { back: boolean; closeUp: boolean }
): Map<number, number> {
  const inOrder = [...new Set(numbers)].toSorted((a, b) => (back ? b - a : a - b))
  const start = inOrder[0] ?? 0
  return new Map(
    inOrder.map((number, at) => [number, first + (closeUp ? at : Math.abs(number - start))])
  )
}

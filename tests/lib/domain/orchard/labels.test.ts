import { describe, expect, test } from 'vitest'

import { rowsOfBlock, treesToLabel } from '@/lib/domain/orchard/label-choice'
import {
  labelsOnSheet,
  onSheets,
  papers,
  sheetMargins,
  sheetNames,
  sheetOf,
} from '@/lib/domain/orchard/label-sheets'

import { aBlock, treesOf } from '../an-orchard'

describe('sheets of labels', () => {
  // A4: ISO 216. US Letter: 8.5 by 11 inches, ANSI/ASME Y14.1. An inch is 25.4 mm.
  test('papers are as large as the standards say', () => {
    expect(papers.a4).toEqual({ widthMm: 210, heightMm: 297 })
    expect(papers.letter.widthMm).toBeCloseTo(8.5 * 25.4, 9)
    expect(papers.letter.heightMm).toBeCloseTo(11 * 25.4, 9)
  })

  test.each(sheetNames)('the labels of %s fit on their paper, none over the edge', (name) => {
    const sheet = sheetOf(name)
    const { leftMm, topMm } = sheetMargins(sheet)

    expect(leftMm).toBeGreaterThanOrEqual(-1e-9)
    expect(topMm).toBeGreaterThanOrEqual(-1e-9)
    const across = 2 * leftMm + sheet.columns * sheet.widthMm + (sheet.columns - 1) * sheet.gapMm
    expect(across).toBeCloseTo(papers[sheet.paper].widthMm, 9)
    expect(2 * topMm + sheet.rows * sheet.heightMm).toBeCloseTo(papers[sheet.paper].heightMm, 9)
  })

  test('a label a tree, and what does not fit goes on the next sheet', () => {
    const trees = Array.from({ length: 30 }, (_, at) => at)

    const sheets = onSheets(trees, sheetOf('a4_70x37'), 1)

    expect(sheets.map((sheet) => sheet.length)).toEqual([24, 6])
    expect(sheets.flat()).toEqual(trees)
  })

  test('a half-used sheet is filled from the label that is said', () => {
    const sheets = onSheets(['a', 'b', 'c'], { columns: 2, rows: 2 }, 3)

    expect(sheets).toEqual([[null, null, 'a', 'b'], ['c']])
  })

  test('the last label of a sheet can be the first, and without trees there is no sheet', () => {
    const sheet = sheetOf('letter_67x25')

    expect(onSheets(['a'], sheet, labelsOnSheet(sheet))[0]?.at(-1)).toBe('a')
    expect(onSheets([], sheet, 12)).toEqual([])
  })
})

describe('trees that get a label', () => {
  const block = aBlock()
  const trees = treesOf(['TT.T', 'T', 'TTT'])

  test('stand in the rows that were chosen, in the order of a walk', () => {
    const chosen = treesToLabel(trees.toReversed(), { block: block.no, fromRow: 1, toRow: 2 })

    expect(chosen.map(({ row, place }) => [row, place])).toEqual([
      [1, 1],
      [1, 2],
      [1, 4],
      [2, 1],
    ])
  })

  test('are of one block only', () => {
    expect(treesToLabel(trees, { block: block.no + 1, fromRow: 1, toRow: 9 })).toEqual([])
    expect(rowsOfBlock(trees, block.no)).toEqual({ from: 1, to: 3 })
    expect(rowsOfBlock(trees, block.no + 1)).toBeNull()
  })
})

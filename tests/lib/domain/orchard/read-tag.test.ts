import { describe, expect, test } from 'vitest'

import { readTag } from '@/lib/domain/orchard/read-tag'

const blocks = [
  { no: 1, code: 'S', name: 'South' },
  { no: 2, code: 'SB', name: 'Stone Barn' },
  { no: 3, code: 'N', name: 'Peñón Alto' },
  { no: 4, code: 'F', name: 'Field 2' },
]
const place = (block: number | null, row: number, at: number) => ({
  kind: 'place',
  block,
  row,
  place: at,
})

describe('a tree is said in many ways', () => {
  test.each([
    ['S 7·14', place(1, 7, 14)],
    ['s 7 14', place(1, 7, 14)],
    ['s7/14', place(1, 7, 14)],
    ['S7-14', place(1, 7, 14)],
    ['  S  7.14 ', place(1, 7, 14)],
    ['SB 7 14', place(2, 7, 14)],
    ['sb07,014', place(2, 7, 14)],
    ['South row 7 tree 14', place(1, 7, 14)],
    ['stone barn 7 14', place(2, 7, 14)],
    ['block S, row 7, place 14', place(1, 7, 14)],
    ['bloque N fila 7 árbol 14', place(3, 7, 14)],
    ['penon alto 7 14', place(3, 7, 14)],
    ['PEÑÓN ALTO 7·14', place(3, 7, 14)],
    ['n 7 14', place(3, 7, 14)],
    ['field 2 7 14', place(4, 7, 14)],
    ['7/14', place(null, 7, 14)],
    ['row 7 tree 14', place(null, 7, 14)],
    ['fila 7, árbol 14', place(null, 7, 14)],
    ['S 7', { kind: 'row', block: 1, row: 7 }],
    ['South, row 7', { kind: 'row', block: 1, row: 7 }],
    ['128', { kind: 'number', no: 128 }],
    ['#128', { kind: 'number', no: 128 }],
    ['no. 128', { kind: 'number', no: 128 }],
    ['nº 128', { kind: 'number', no: 128 }],
  ])('%s', (text, read) => {
    expect(readTag(text, blocks)).toEqual(read)
  })
})

test.each(['', '   ', 'S', 'the old pear', 'X 7 14', 'seven 14', '1 2 3', 'S 7 14 2', '·/·'])(
  'it is not clear what "%s" means',
  (text) => {
    expect(readTag(text, blocks)).toBeNull()
  }
)

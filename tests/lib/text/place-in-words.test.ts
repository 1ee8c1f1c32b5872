import { describe, expect, test } from 'vitest'

import type { Neighbour, PlaceInWords } from '@/lib/domain/planning/place-in-words'
import type { Way } from '@/lib/domain/planning/way'
import { crew as en } from '@/lib/text/en/crew'
import { crew as es } from '@/lib/text/es/crew'
import { formatFor } from '@/lib/text/format'
import { placeSentences, wayLength, waySentence } from '@/lib/text/place-in-words'

const english = formatFor({ language: 'en', units: 'metric', timeZone: 'UTC' })
const spanish = formatFor({ language: 'es', units: 'metric', timeZone: 'UTC' })

const plum: Neighbour = { kind: 'tree', species: 'plum' }
const apple: Neighbour = { kind: 'tree', species: 'apple' }
const gap: Neighbour = { kind: 'gap' }
const rowEnd: Neighbour = { kind: 'row_end' }

describe('the claim is confirmed in words a person would say', () => {
  test('in both languages', () => {
    expect(placeSentences(en, english, cherry(plum, plum))).toBe(
      'Row 7, fourth from the tagged end. A cherry, between two plums.'
    )
    expect(placeSentences(es, spanish, cherry(plum, plum))).toBe(
      'Fila 7, el cuarto desde el extremo con placa. Un cerezo, entre dos ciruelos.'
    )
  })

  test.each([
    [plum, apple, 'A cherry, with a plum on the left and an apple on the right.'],
    [gap, plum, 'A cherry, with a gap on the left and a plum on the right.'],
    [plum, rowEnd, 'A cherry, with a plum on the left and the end of the row on the right.'],
    [gap, gap, 'A cherry, between two gaps.'],
    [rowEnd, rowEnd, 'A cherry, alone in its row.'],
  ])('with %o and %o beside it', (left, right, sentence) => {
    expect(placeSentences(en, english, cherry(left, right))).toContain(sentence)
  })
})

test('the way is said as one goes it', () => {
  expect(waySentence(en, way({}))).toBe(
    'Along row 7, away from the tagged end, 6 trees on, on your left.'
  )
  expect(waySentence(en, way({ start: 'far_end', towards: 'tagged', side: 'right' }))).toBe(
    'Go to the far end. Along row 7, towards the tagged end, 6 trees on, on your right.'
  )
  expect(waySentence(es, way({ towards: 'across', trees: 0, side: 'ahead' }))).toBe(
    'Justo enfrente, en la fila 7, delante de ti.'
  )
  expect(wayLength(en, english, way({}))).toBe('46 m, 61 paces')
  expect(wayLength(en, english, way({ minutes: 3 }))).toBe('46 m, 61 paces, about 3 min')
})

function cherry(left: Neighbour, right: Neighbour): PlaceInWords {
  return { row: 7, nth: 4, species: 'cherry', left, right }
}

function way(change: Partial<Way>): Way {
  return {
    block: 1,
    alongRow: 7,
    start: 'here',
    towards: 'far',
    trees: 6,
    side: 'left',
    metres: 46,
    paces: 61,
    minutes: 1,
    ...change,
  }
}

import { describe, expect, test } from 'vitest'

import { nothingSet, setOf, type TypedSet, wrongIn } from '@/components/ground/trees-set'

const typed = (changes: Partial<TypedSet>): TypedSet => ({ ...nothingSet, ...changes })

test('what is not touched is not named', () => {
  expect(setOf(nothingSet, 'metric')).toEqual({})
})

test('what is typed is set in metres and millimetres', () => {
  const all = typed({ planted: '1998', height: '3,2', trunk: '18.5', asksSaw: 'no', life: 'dead' })

  expect(setOf(all, 'metric')).toEqual({
    planted: 1998,
    heightCm: 320,
    trunkMm: 185,
    asksSaw: false,
    life: 'dead',
  })
  expect(setOf(typed({ height: '10', trunk: '7' }), 'us')).toEqual({ heightCm: 305, trunkMm: 178 })
})

test('a dash, or the choice of it, says that nobody knows', () => {
  const unknown = typed({ planted: '-', height: '–', cultivar: 'unknown', size: 'unknown' })

  expect(setOf(unknown, 'metric')).toEqual({
    planted: null,
    heightCm: null,
    cultivar: null,
    size: null,
  })
})

test('a species and its cultivar go together', () => {
  expect(setOf(typed({ species: 'plum', cultivar: '3' }), 'metric')).toEqual({
    species: 'plum',
    cultivar: 3,
  })
})

describe('what cannot be is named', () => {
  test.each<[Partial<TypedSet>, string[]]>([
    [{ planted: '98' }, ['planted']],
    [{ planted: '1998.5' }, ['planted']],
    [{ height: 'tall' }, ['height']],
    [{ height: '60' }, ['height']],
    [{ trunk: '0' }, ['trunk']],
    [{ planted: '1998', height: '3', trunk: '20' }, []],
  ])('%o', (changes, wrong) => {
    expect(wrongIn(typed(changes), 'metric')).toEqual(wrong)
  })
})

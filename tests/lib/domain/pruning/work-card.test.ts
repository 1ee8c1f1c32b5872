import fc from 'fast-check'
import { describe, expect, test } from 'vitest'

import { budSites, habits, sizeClasses, species } from '@/lib/domain/orchard/types'
import { isTooMuch, yearsLimit } from '@/lib/domain/pruning/canopy-share'
import { type LastYearsWood, mayGo } from '@/lib/domain/pruning/last-years-wood'
import { factsOf, formOf, renewalShare } from '@/lib/domain/pruning/species-facts'
import { type TreeToPrune, workCard } from '@/lib/domain/pruning/work-card'

const apricot: TreeToPrune = {
  species: 'apricot',
  habit: 'both',
  buds: 'middle',
  plantedYear: 2015,
  sizeClass: 'medium',
  isNeglected: false,
  isTrainingRound: false,
  thisYear: 2026,
  month: 8,
}

const anyTree = fc.record<TreeToPrune>({
  species: fc.constantFrom(...species),
  habit: fc.constantFrom(...habits),
  buds: fc.constantFrom(...budSites),
  plantedYear: fc.option(fc.integer({ min: 1950, max: 2026 })),
  sizeClass: fc.option(fc.constantFrom(...sizeClasses)),
  isNeglected: fc.boolean(),
  isTrainingRound: fc.boolean(),
  thisYear: fc.constant(2026),
  month: fc.integer({ min: 1, max: 12 }),
})

function codesFor(tree: Partial<TreeToPrune>) {
  return workCard({ ...apricot, ...tree }).steps.map(({ code }) => code)
}

function shootsOf(tree: Partial<TreeToPrune>): LastYearsWood | null {
  const last = workCard({ ...apricot, ...tree }).steps.at(-1)
  return last?.code === 'last_years_wood' ? last.what : null
}

// The order is common practice, no source.
describe('the order of work', () => {
  test('opens the centre after the sick and the crossing wood, and shortens last', () => {
    expect(codesFor({})).toEqual([
      'dead_broken_diseased',
      'crossing_rubbing',
      'open_the_centre',
      'ground_up_inside_out',
      'renew_spurs',
      'last_years_wood',
    ])
  })

  test('keeps the leader where there is one, and opens nothing where the form is unknown', () => {
    expect(codesFor({ species: 'pear' })).toContain('free_the_leader')
    expect(codesFor({ species: 'other' })).toContain('let_light_in')
  })

  test('makes shoots new where a species has no spurs, and renews nothing on a shoot bearer of another', () => {
    expect(codesFor({ species: 'peach' })).toContain('renew_shoots')
    expect(codesFor({ species: 'apple', habit: 'shoot' })).not.toContain('renew_spurs')
    expect(codesFor({ species: 'quince' })).not.toContain('renew_spurs')
  })

  test('of any tree begins with dead wood', () => {
    fc.assert(
      fc.property(anyTree, (tree) => workCard(tree).steps[0]?.code === 'dead_broken_diseased')
    )
  })
})

// UC Master Gardener column, San Joaquin: read.
test.each([
  'almond',
  'apricot',
  'fig',
  'peach',
  'cherry',
  'european_plum',
  'japanese_plum',
] as const)('%s is grown with an open centre', (each) => expect(formOf(each)).toBe('open_centre'))
test.each(['apple', 'pear', 'persimmon', 'quince'] as const)(
  '%s is often grown with a leader',
  (each) => expect(formOf(each)).toBe('leader')
)

// With a productive life of L years 1/L is replaced each year: second hand, general references.
test.each([
  [3, 0.3333],
  [4, 0.25],
  [5, 0.2],
  [8, 0.125],
  [10, 0.1],
])('spurs that live %s years are renewed by %s a year', (years, share) => {
  expect(renewalShare({ least: years, most: years }).most).toBeCloseTo(share, 4)
})

test('almond spurs are renewed by a fifth, and the longer life asks for less', () => {
  const almond = workCard({ ...apricot, species: 'almond' }).steps.find(
    ({ code }) => code === 'renew_spurs'
  )

  expect(almond).toMatchObject({ share: { least: 0.2, most: 0.2 } })
  expect(renewalShare({ least: 3, most: 5 })).toEqual({ least: 1 / 5, most: 1 / 3 })
})

describe('spurs are renewed', () => {
  const renewal = (species: TreeToPrune['species']) =>
    workCard({ ...apricot, species }).steps.find(({ code }) => code === 'renew_spurs')

  test('by the smaller share where sources do not agree', () => {
    // Two to five years of life, from memory, not confirmed.
    expect(renewal('sour_cherry')).toMatchObject({ share: { least: 0.2, most: 0.2 } })
  })

  test('not by a share where little goes in a usual year', () => {
    expect(renewal('pomegranate')).toBeUndefined()
  })

  test('of stone fruit otherwise than of apples: a spur may hold nothing but flowers', () => {
    expect(renewal('cherry')).toMatchObject({ spurs: 'stone' })
    expect(renewal('apple')).toMatchObject({ spurs: 'pome' })
  })
})

describe('how many shoots are shortened is the species’', () => {
  // Shares of last year's growth: from memory.
  test.each([
    ['cherry', { least: 0.05, most: 0.1 }],
    ['apple', { least: 0.1, most: 0.2 }],
    ['pomegranate', 'light'],
    ['apricot', null],
    ['peach', null],
  ] as const)('%s: %j', (species, usual) => {
    expect(workCard({ ...apricot, species }).steps.at(-1)).toMatchObject({ usual })
  })

  test('and nothing is said of it where none is', () => {
    fc.assert(
      fc.property(anyTree, (tree) => {
        const last = workCard({ ...tree, buds: 'tip' }).steps.at(-1)
        expect(last?.code === 'last_years_wood' ? last.usual : null).toBeNull()
      }),
      { numRuns: 50 }
    )
  })
})

// General gardening reference on apricots, second hand; common practice agrees.
describe('last year’s shoots', () => {
  test.each<[Partial<TreeToPrune>, LastYearsWood | null]>([
    [{ buds: 'tip' }, 'never'],
    [{ buds: 'tip', species: 'apple' }, 'leave_short'],
    [{ buds: 'middle' }, 'outer_third'],
    [{ buds: 'base' }, 'outer_half'],
    [{ habit: 'spur', buds: 'unknown' }, 'outer_third'],
    // A species without spurs: somebody wrote down what cannot be.
    [{ species: 'persimmon', habit: 'spur', buds: 'unknown' }, 'leave_and_ask'],
    [{ habit: 'shoot', buds: 'unknown' }, 'do_not_shorten'],
    // A species with both habits of which nobody said more: ask. Common practice.
    [{ habit: 'both', buds: 'unknown' }, 'leave_and_ask'],
    [{ habit: 'unknown', buds: 'unknown' }, 'leave_and_ask'],
    [{ plantedYear: 2022 }, null],
    [{ plantedYear: 2021 }, 'outer_third'],
    [{ plantedYear: null }, 'outer_third'],
    [{ plantedYear: null, sizeClass: 'young' }, null],
    [{ isTrainingRound: true }, null],
    [{ isNeglected: true }, 'another_winter'],
    [{ isNeglected: true, species: 'peach' }, 'outer_third'],
  ])('%o: %s', (tree, what) => {
    expect(shootsOf(tree)).toBe(what)
  })

  test('on a tip bearer are never shortened, whatever else is known of the tree', () => {
    fc.assert(
      fc.property(anyTree, (tree) => {
        const tip = { ...tree, buds: 'tip' as const }

        expect(mayGo(tip)).toBeNull()
        expect(['never', 'leave_short', 'another_winter', null]).toContain(shootsOf(tip))
      })
    )
  })

  test('are never shortened more because less is known', () => {
    fc.assert(
      fc.property(anyTree, (tree) => {
        const most = (bearing: TreeToPrune) => mayGo(bearing)?.most ?? 0

        // Of a spur bearer the habit alone says that its shoots carry little.
        fc.pre(tree.habit !== 'spur')
        expect(most({ ...tree, buds: 'unknown' })).toBeLessThanOrEqual(most(tree))
        expect(most({ ...tree, habit: 'unknown' })).toBeLessThanOrEqual(most(tree))
      })
    )
  })
})

describe('a young tree in training', () => {
  test('loses what is dead or broken, and the rest is the lead’s', () => {
    expect(codesFor({ plantedYear: 2024 })).toEqual(['dead_broken_diseased', 'in_training'])
  })
})

describe('a neglected tree', () => {
  // Two to three years: general references, second hand.
  test('is brought back over two or three winters, without renewal or shortening in the first', () => {
    const card = workCard({ ...apricot, species: 'apple', isNeglected: true })

    expect(card.winters).toEqual({ least: 2, most: 3 })
    expect(card.steps.map(({ code }) => code)).not.toContain('renew_spurs')
  })

  test('is not spread where half of last year’s wood goes anyway', () => {
    expect(workCard({ ...apricot, species: 'peach', isNeglected: true }).winters).toBeNull()
  })

  test('is never asked for more steps than a kept one', () => {
    fc.assert(
      fc.property(anyTree, (tree) => {
        const kept = workCard({ ...tree, isNeglected: false }).steps.length
        expect(workCard({ ...tree, isNeglected: true }).steps.length).toBeLessThanOrEqual(kept)
      })
    )
  })
})

describe('how much may go in a year', () => {
  test.each([
    // ANSI A300-1995 5.3.1, as reprinted: a quarter.
    ['apple', 0.26, true],
    ['apple', 0.25, false],
    // General garden references, second hand: 40 to 50 % of last year's wood.
    ['peach', 0.45, false],
    ['nectarine', 0.51, true],
  ] as const)('%s, %s of it: too much is %s', (each, share, tooMuch) => {
    expect(isTooMuch(each, share)).toBe(tooMuch)
  })

  test('of a peach is counted in last year’s wood, between 40 and 50 %', () => {
    expect(yearsLimit('peach')).toMatchObject({ of: 'last_years_wood', value: 0.5 })
    expect(factsOf('peach').take.value).toEqual({ of: 'last_years_wood', least: 0.4, most: 0.5 })
  })
})

// University of California IPM, Apricot and Cherry: July and August.
test.each([
  ['apricot', 8, false],
  ['apricot', 1, true],
  ['sour_cherry', 1, true],
  ['apple', 1, false],
] as const)('%s in month %s: out of season is %s', (each, month, isOut) => {
  expect(workCard({ ...apricot, species: each, month }).isOutOfSeason).toBe(isOut)
})

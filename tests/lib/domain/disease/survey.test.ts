import { describe, expect, test } from 'vitest'

import type { Case } from '@/lib/domain/disease/scouting'
import { type SurveyAsked, survey } from '@/lib/domain/disease/survey'
import type { Tree } from '@/lib/domain/orchard/types'

import { aBlock, treesOf } from '../an-orchard'

const block = aBlock()
const square = (rows: number, places: number) =>
  treesOf(Array.from({ length: rows }, () => 'T'.repeat(places)))

/** Trees by plate, "3·4". */
function sickAt(trees: readonly Tree[], plates: readonly string[], sign = 'canker'): Case[] {
  return plates.map((plate) => {
    const tree = trees.find(({ row, place }) => plate === `${row}·${place}`)
    return { no: tree?.no ?? Number.NaN, sign, confirmed: true }
  })
}

function ask(trees: readonly Tree[], cases: readonly Case[], more: Partial<SurveyAsked> = {}) {
  return survey({
    trees,
    blocks: [block],
    cases,
    known: cases.map((one) => ({ ...one, severity: 'low' })),
    year: 2026,
    block: null,
    rings: 1,
    seed: 1,
    ...more,
  })
}

const corner = ['1·1', '1·2', '2·1', '2·2', '3·1', '3·2']

describe('the pattern', () => {
  test('six sick trees in a corner of a hundred are clustered, and how much is said', () => {
    const trees = square(10, 10)
    const { pattern, incidence } = ask(trees, sickAt(trees, corner))

    expect(incidence).toMatchObject({ sick: 6, trees: 100, share: 0.06 })
    expect(pattern).toMatchObject({ state: 'defined', verdict: 'clustered' })
    if (pattern.state !== 'defined') return
    // Eleven pairs; of 342 joins chance would make 342 * 30 / 9900 = 1.04 sick at both ends.
    expect(pattern.counts.bothSick).toBe(11)
    expect(pattern.ratio).toBeCloseTo(11 / ((342 * 6 * 5) / (100 * 99)), 10)
    expect(pattern.formula?.moments.bothSick.mean).toBeCloseTo(pattern.expected, 10)
    expect(pattern.shuffled.pAtLeast).toBeLessThan(0.005)
  })

  test('every other tree of every other row is spread out', () => {
    const trees = square(12, 12)
    const even = [1, 3, 5, 7, 9, 11]
    const plates = even.flatMap((row) => even.map((place) => `${row}·${place}`))

    expect(ask(trees, sickAt(trees, plates)).pattern).toMatchObject({ verdict: 'spread_out' })
  })

  test('a few far apart are too few to tell', () => {
    const trees = square(10, 10)

    expect(ask(trees, sickAt(trees, ['1·1', '5·9', '9·2'])).pattern).toMatchObject({
      verdict: 'too_few',
    })
  })

  test.each([
    ['none_sick', []],
    ['one_sick', ['1·1']],
    ['all_sick', ['1·1', '1·2', '1·3', '2·1', '2·2', '2·3']],
  ] as const)('%s: not defined, and no number is given', (why, plates) => {
    const trees = square(2, 3)
    const { pattern } = ask(trees, sickAt(trees, plates))

    // Without a sick tree no kind of tree is counted.
    expect(pattern).toEqual({ state: 'not_defined', why: why === 'none_sick' ? 'no_trees' : why })
  })

  test('trees without neighbours have no pattern', () => {
    const trees = treesOf(['T.T.T.T'])

    expect(ask(trees, sickAt(trees, ['1·1', '1·3'])).pattern).toMatchObject({
      why: 'no_neighbours',
    })
  })

  test('a row of apricots that are nearly all sick is not clustered for standing together', () => {
    const trees = square(8, 8).map((tree) =>
      tree.row <= 2 ? { ...tree, species: 'apricot' as const } : tree
    )
    const plates = ['1·1', '1·3', '1·4', '1·6', '1·8', '2·2', '2·3', '2·5', '2·7', '2·8']
    const { incidence, pattern } = ask(trees, sickAt(trees, plates))

    expect(incidence?.trees).toBe(16)
    expect(pattern).toMatchObject({ verdict: 'chance' })
  })

  test('a block is counted by itself', () => {
    const other = aBlock({ no: 2, firstTree: null, bearingDeg: null })
    const trees = [...square(4, 4), ...treesOf(['TTTT', 'TTTT'], other, 50)]
    const cases = [50, 51].map((no) => ({ no, sign: 'gum', confirmed: false }))

    const asked = { blocks: [block, other], block: 2 }
    expect(ask(trees, cases, asked).incidence).toMatchObject({ sick: 2, trees: 8 })
    expect(ask(trees, cases, { ...asked, block: 1 }).incidence).toBeNull()
  })

  test('what is to be replaced is proposed for the block that is asked for', () => {
    const other = aBlock({ no: 2, firstTree: null, bearingDeg: null })
    const trees = [...square(3, 3), ...treesOf(['TDT'], other, 50)]

    const asked = { blocks: [block, other] }
    expect(ask(trees, [], { ...asked, block: 2 }).toReplace.map(({ no }) => no)).toEqual([51])
    expect(ask(trees, [], { ...asked, block: 1 }).toReplace).toEqual([])
  })

  test('the same seed says the same', () => {
    const trees = square(10, 10)
    const cases = sickAt(trees, corner)
    expect(ask(trees, cases, { seed: 5 })).toEqual(ask(trees, cases, { seed: 5 }))
  })
})

describe('where to look next', () => {
  const trees = square(5, 5)
  const plateOf = (no: number) => {
    const tree = trees.find((one) => one.no === no)
    return `${tree?.row}·${tree?.place}`
  }

  test('the trees beside sick ones, those with more of them first, then the nearer', () => {
    const { toScout } = ask(trees, sickAt(trees, ['3·3', '3·4']))

    expect(toScout).toHaveLength(10)
    expect(toScout.slice(0, 4).map(({ sickNeighbours }) => sickNeighbours)).toEqual([2, 2, 2, 2])
    expect(toScout.slice(4).map(({ no }) => plateOf(no))).toEqual([
      '3·2',
      '3·5',
      '2·2',
      '2·5',
      '4·2',
      '4·5',
    ])
    expect(toScout.at(4)?.nearestM).toBe(4)
  })

  test('one ring further on request, after the first', () => {
    const { toScout } = ask(trees, sickAt(trees, ['1·1']), { rings: 2 })

    expect(toScout.map(({ ring }) => ring)).toEqual([1, 1, 1, 2, 2, 2, 2, 2])
  })

  test('not what is flagged already, nor what is dead', () => {
    const withDead = trees.map((tree) =>
      tree.row === 1 && tree.place === 2 ? { ...tree, life: 'dead' as const } : tree
    )
    const cases = sickAt(trees, ['1·1'])
    const flagged = trees.find((tree) => tree.row === 2 && tree.place === 1)?.no ?? 0
    const known = [cases[0]?.no ?? 0, flagged].map(
      (no) => ({ no, sign: 'gum', severity: 'low', confirmed: false }) as const
    )
    const { toScout } = ask(withDead, cases, { known })

    expect(toScout.map(({ no }) => plateOf(no))).toEqual(['2·2'])
  })

  /** UC IPM names apricot and cherry as hosts of Eutypa dieback. */
  test('its own kind first, then a kind that shares the disease, another kind last', () => {
    const mixed = treesOf(['TTTT', 'TTTT']).map((tree) => ({
      ...tree,
      species: (['apple', 'apricot', 'apricot', 'cherry'] as const)[tree.place - 1] ?? 'apple',
    }))
    const { toScout } = ask(mixed, sickAt(mixed, ['1·3'], 'gum'))
    expect(toScout.map(({ kin }) => kin)).toEqual([
      'same_kind',
      'same_kind',
      'same_kind',
      'shares_disease',
      'shares_disease',
    ])

    const apples = ask(mixed, sickAt(mixed, ['1·1'], 'gum')).toScout
    expect(apples.map(({ kin }) => kin)).toEqual(['same_kind', 'other_kind', 'other_kind'])
  })
})

import { describe, expect, test } from 'vitest'

import {
  answersOf,
  isOpen,
  nothingTold,
  seenSigns,
  signOf,
  type Told,
} from '@/lib/domain/safety/five-questions'
import { keepOutFor } from '@/lib/domain/safety/keep-out'
import { decide } from '@/lib/domain/safety/ours-or-the-arborists'
import { referRules } from '@/lib/domain/safety/refer-rules'

const here = { limbCm: 10, feetCm: 183, leanDeg: 15 }
const rules = referRules({ ...here, lineKv: null })
const small: Told = {
  ...nothingTold,
  seen: ['too_high_or_thick'],
  thickness: 'thin',
  height: 'ladder',
  trunk: [],
  under: [],
}

function codesOf(told: Told): string[] {
  return decide(answersOf(told, here), rules).reasons.map(({ code }) => code)
}

test('a thin limb within reach, and nothing else there: ours', () => {
  expect(codesOf(small)).toEqual([])
})

test.each<[string, Partial<Told>, string[]]>([
  ['the thickness was not measured', { thickness: 'not_known' }, ['limb_thick']],
  ['nobody answered how high', { height: null }, ['too_high']],
  ['it looks thin and measures more', { limbCm: 11 }, ['limb_thick']],
  ['it looks thick and measures less', { thickness: 'thick', limbCm: 8 }, []],
  [
    'the trunk could not be seen',
    { trunk: 'not_known' },
    ['shell_thin', 'conks', 'canker_wide', 'metal_in_wood', 'leaning_far'],
  ],
  ['there is a hollow', { trunk: ['hollow'] }, ['shell_thin']],
  ['a hollow with much sound wood', { trunk: ['hollow'], hollow: { trunkCm: 30, soundCm: 6 } }, []],
  [
    'a hollow with little',
    { trunk: ['hollow'], hollow: { trunkCm: 30, soundCm: 4.5 } },
    ['shell_thin'],
  ],
  [
    'wire has grown in and it is dead',
    { trunk: ['metal'], under: ['dead_tree'] },
    ['metal_in_wood', 'dead_tree'],
  ],
  [
    'a line, however far',
    { line: { toTreeM: 40, ladderM: 0, toolM: 0, branchM: 0 } },
    ['line_near'],
  ],
  ['not sure', { seen: ['other'] }, ['something_else']],
])('%s', (_, change, codes) => {
  expect(codesOf({ ...small, ...change })).toEqual(codes)
})

test('where nothing is cut from a ladder, what asks for one is too high', () => {
  const noLadders = { ...here, feetCm: 0 }
  const decided = (height: Told['height']) =>
    decide(answersOf({ ...small, height }, noLadders), referRules({ ...noLadders, lineKv: null }))

  expect(decided('ladder').reasons).toEqual([
    { code: 'too_high', seen: true, value: null, limit: 0 },
  ])
  expect(decided('ground').outcome).toBe('ours')
})

test('nothing answered is the arborist’s', () => {
  expect(decide(answersOf(nothingTold, here), rules).outcome).toBe('refer')
})

test('a ladder that would reach the line leaves nothing of the distance', () => {
  const line = { toTreeM: 3, ladderM: 3, toolM: 1, branchM: 0 }
  const known = referRules({ ...here, lineKv: 25 })

  expect(decide(answersOf({ ...small, line }, here), known).reasons).toEqual([
    { code: 'line_near', seen: true, value: 0, limit: 3.05 },
  ])
})

describe('the flag', () => {
  test('is named after the gravest thing ticked', () => {
    expect(signOf(['nest', 'power_line', 'hanging_limb'])).toBe('power_line')
    expect(signOf(['other', 'too_high_or_thick'])).toBe('too_high_or_thick')
    expect(signOf(['other'])).toBe('other')
  })

  test('leaves open whose it is only where a limb looked high or thick and nothing else is there', () => {
    expect(seenSigns.filter((sign) => isOpen([sign]))).toEqual(['too_high_or_thick'])
    expect(isOpen(['too_high_or_thick', 'nest'])).toBe(false)
  })
})

/** Common practice: nobody within one and a half times the length of what falls. */
describe('the keep-out', () => {
  const reason = (code: 'crack' | 'nest', seen = true) => ({ code, seen, value: null, limit: null })

  test.each([
    ['a nest in a tall tree', [reason('nest')], 900, 10],
    ['a crack in a tall tree', [reason('crack')], 900, 13.5],
    ['a crack in a low tree', [reason('crack')], 500, 10],
    ['a crack in a tree that nobody measured', [reason('crack')], null, 10],
    ['a crack that nobody looked for', [reason('crack', false)], 900, 10],
    ['a tree higher than any', [reason('crack')], 90_000, 200],
  ])('of %s', (_, reasons, heightCm, metres) => {
    expect(keepOutFor(reasons, { heightCm, houseM: 10 })).toBe(metres)
  })
})

import { describe, expect, test } from 'vitest'

import { asksForTwo, claimArgs, firstWish, isSaid } from '@/components/tree/claim-wish'
import { type DangerDraft, decisionOf, noDanger } from '@/components/tree/danger-draft'
import { emptyFlag, type FlagDraft, flagArgs } from '@/components/tree/flag-draft'
import { reasonsNone } from '@/components/tree/reasons-none'
import { shareAfter } from '@/components/tree/share-after'
import { commandOf } from '@/lib/events/commands'
import { aTree } from '../../lib/domain/an-orchard'

const ordinary = aTree({ no: 1 })
const withSaw = aTree({ no: 2, asksSaw: true })
const whose = {
  id: crypto.randomUUID(),
  orchardId: crypto.randomUUID(),
  personId: crypto.randomUUID(),
}
const teo = crypto.randomUUID()

describe('the claim', () => {
  test('of an ordinary tree needs nothing said: claim, yes', () => {
    const wish = firstWish(ordinary, null)

    expect(isSaid(ordinary, wish)).toBe(true)
    expect(commandOf('claim_tree', claimArgs(1, wish), whose).args).toEqual({
      tree: 1,
      purpose: 'work',
      kind: 'prune',
      ladder: false,
      helpers: [],
      learners: [],
      buddy: null,
    })
  })

  test('of a tree that asks for a saw waits until somebody is named', () => {
    const wish = firstWish(withSaw, null)

    expect(isSaid(withSaw, wish)).toBe(false)
    expect(isSaid(withSaw, { ...wish, company: 'buddy' })).toBe(false)
    expect(isSaid(withSaw, { ...wish, company: 'buddy', person: teo })).toBe(true)
  })

  test('with a ladder is not for one alone', () => {
    const alone = { ...firstWish(ordinary, null), ladder: true }

    expect(asksForTwo(ordinary, alone)).toBe(true)
    expect(isSaid(ordinary, alone)).toBe(false)
  })

  test('of a tree dealt to a pair names the other', () => {
    expect(claimArgs(1, firstWish(ordinary, teo)).helpers).toEqual([teo])
  })
})

describe('a flag', () => {
  const house = { limbCm: 10, feetCm: 183, leanDeg: 15, units: 'metric' } as const
  const here = { ...house, share: 40, houseM: 10, heightCm: 900 }
  const hazard = (danger: Partial<DangerDraft>): FlagDraft => ({
    ...emptyFlag,
    kind: 'arborist',
    danger: { ...noDanger, ...danger },
  })

  test('is not sent before what one sees is chosen', () => {
    expect(flagArgs(7, emptyFlag, here)).toBeNull()
    expect(flagArgs(7, { ...hazard({ seen: ['crack'] }), kind: 'disease' }, here)).toBeNull()
    expect(flagArgs(7, hazard({ thickness: 'thick' }), here)).toBeNull()
  })

  test('for disease says the sign, how bad and where, and never ends work', () => {
    const draft = {
      ...emptyFlag,
      kind: 'disease',
      disease: 'gum',
      place: 'trunk',
      note: '  ',
    } as const

    expect(flagArgs(7, draft, here)).toEqual({
      tree: 7,
      kind: 'disease',
      sign: 'gum',
      severity: 'low',
      part: 'trunk',
      note: null,
    })
  })

  test.each([
    ['hanging_limb', 'danger_now'],
    ['power_line', 'danger_now'],
    ['nest', 'high'],
    ['other', 'high'],
  ] as const)('for %s alone is %s, with its reason', (sign, severity) => {
    const args = flagArgs(7, hazard({ seen: [sign] }), here)

    expect(args).toMatchObject({ kind: 'arborist', sign, severity, share: 40, keepOutM: null })
    expect(args?.reasons).toMatchObject([{ seen: true }])
    expect(args && commandOf('flag_tree', args, whose).args.share).toBe(40)
  })

  test('of a limb says what was measured, in centimetres whatever was typed', () => {
    const inInches = hazard({ seen: ['too_high_or_thick'], limb: '5,5', bearingDeg: 90 })

    expect(flagArgs(7, { ...inInches, place: 'limb' }, { ...here, units: 'us' })).toMatchObject({
      sign: 'too_high_or_thick',
      part: 'limb',
      limb: { cm: 13.97, bearingDeg: 90 },
      reasons: [{ code: 'limb_thick', seen: true, value: 13.97, limit: 10 }],
    })
  })

  test('of a limb that the rules leave to us is taken all the same', () => {
    const small = hazard({
      seen: ['too_high_or_thick'],
      thickness: 'thin',
      height: 'ground',
      trunk: [],
      under: [],
    })

    expect(decisionOf(small.danger, here).outcome).toBe('ours')
    expect(flagArgs(7, small, here)).toMatchObject({ kind: 'arborist', reasons: [] })
  })

  test('a thickness that cannot be counts as not measured', () => {
    const wrong = hazard({ seen: ['too_high_or_thick'], limb: '-4' })

    expect(flagArgs(7, wrong, here)?.limb).toBeNull()
    expect(decisionOf(wrong.danger, here).reasons[0]).toMatchObject({
      code: 'limb_thick',
      seen: false,
    })
  })

  test('closes more ground where a tall tree may fall', () => {
    // Common practice: one and a half times its length.
    expect(flagArgs(7, hazard({ seen: ['crack'] }), here)?.keepOutM).toBe(13.5)
  })
})

describe('a lead who knows the line', () => {
  const line = { kv: '230', toTree: '12', ladder: '3', tool: '2', branch: '4' }
  const circumstances = { limbCm: 10, feetCm: 183, leanDeg: 15, units: 'metric' } as const
  const reasonsFor = (typed: Partial<typeof line>) =>
    decisionOf(
      { ...noDanger, seen: ['power_line'], line: { ...line, ...typed } },
      circumstances
    ).reasons.filter(({ code }) => code === 'line_near')

  test('has the ladder and the tool, or the branch, taken from the distance', () => {
    expect(reasonsFor({})).toEqual([])
    // 29 CFR 1910.269(x): 16 ft at 230 kV.
    expect(reasonsFor({ toTree: '9' })).toMatchObject([{ seen: true, value: 4, limit: 4.8768 }])
  })

  test.each([{ kv: '' }, { toTree: '' }, { branch: '' }, { tool: 'x' }])(
    'and leaves something out (%j): the arborist’s',
    (typed) => {
      expect(reasonsFor(typed)).toHaveLength(1)
    }
  )
})

test.each([
  [0, null],
  [1, 20],
  [4, 80],
  [5, 99],
])('after %i of five steps the share is %j', (stepsDone, share) => {
  expect(shareAfter(stepsDone, 5)).toBe(share)
})

test('why no tree is left is told in few reasons, the commonest first', () => {
  const refused = new Map([
    ['arborist_flag', 2],
    ['inside_keep_out', 5],
    ['dealt_to_another', 9],
    ['moon_too_full', 1],
  ])

  expect(reasonsNone(refused)).toEqual([
    { reason: 'dealt', trees: 9 },
    { reason: 'closed', trees: 5 },
    { reason: 'other', trees: 1 },
  ])
})

import { describe, expect, test } from 'vitest'

import { asksForTwo, claimArgs, firstWish, isSaid } from '@/components/tree/claim-wish'
import { emptyFlag, flagArgs } from '@/components/tree/flag-draft'
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
  test('is not sent before what one sees is chosen', () => {
    expect(flagArgs(7, emptyFlag, null)).toBeNull()
    expect(flagArgs(7, { ...emptyFlag, kind: 'disease', hazard: 'crack' }, null)).toBeNull()
  })

  test('for disease says the sign, how bad and where, and never ends work', () => {
    const draft = {
      ...emptyFlag,
      kind: 'disease',
      disease: 'gum',
      place: 'trunk',
      note: '  ',
    } as const

    expect(flagArgs(7, draft, 40)).toEqual({
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
  ] as const)('for %s is %s', (hazard, severity) => {
    const args = flagArgs(7, { ...emptyFlag, kind: 'arborist', hazard }, 40)

    expect(args).toMatchObject({ kind: 'arborist', sign: hazard, severity, share: 40 })
    expect(args && commandOf('flag_tree', args, whose).args.share).toBe(40)
  })
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

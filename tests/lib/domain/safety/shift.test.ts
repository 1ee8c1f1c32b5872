import { describe, expect, test } from 'vitest'

import { asksOf } from '@/lib/domain/safety/asks'
import { topicCodes, topicOf } from '@/lib/domain/safety/briefing-topics'
import { equipmentFor } from '@/lib/domain/safety/equipment'
import { proposedOff } from '@/lib/domain/safety/species-season'
import { checksFor, toolCheckCodes, toolKinds } from '@/lib/domain/safety/tool-checks'

describe('species proposed as off', () => {
  // UC IPM Pest Management Guidelines, Apricot r5100911 and Cherry: July and August.
  test.each([
    [1, ['apricot', 'cherry', 'sour_cherry']],
    [6, ['apricot', 'cherry', 'sour_cherry']],
    [7, []],
    [8, []],
    [9, ['apricot', 'cherry', 'sour_cherry']],
    [12, ['apricot', 'cherry', 'sour_cherry']],
  ])('month %i: %j', (month, off) => {
    expect(proposedOff(month)).toEqual(off)
  })

  test('follow the orchard’s own dry months', () => {
    expect(proposedOff(2, { apricot: [1, 2], plum: [7] })).toEqual(['plum'])
  })
})

describe('what a tree asks for', () => {
  // The limit is a house rule, common practice.
  test.each([
    [250, false, { ladder: false, saw: false, feetOnTheGround: false }],
    [251, false, { ladder: true, saw: false, feetOnTheGround: false }],
    [null, true, { ladder: false, saw: true, feetOnTheGround: true }],
  ])('height %s, saw %s', (heightCm, asksSaw, asks) => {
    expect(asksOf({ heightCm, asksSaw }, 250)).toEqual(asks)
  })
})

test('a helmet is asked for when somebody cuts overhead', () => {
  const codes = (cuttingOverhead: boolean) =>
    equipmentFor({ cuttingOverhead }).map(({ code }) => code)

  expect(codes(false)).toEqual(['eye_protection', 'gloves', 'shoes', 'long_sleeves'])
  expect(codes(true)).toContain('helmet')
})

describe('the look at a tool', () => {
  test('asks something of every kind, and no question is unused', () => {
    const asked = toolKinds.flatMap((kind) => checksFor(kind).map(({ code }) => code))

    for (const kind of toolKinds) expect(checksFor(kind).length).toBeGreaterThan(0)
    expect(new Set(asked)).toEqual(new Set(toolCheckCodes))
  })

  // Washington Admin. Code 296-307-05505(1); OSHA QuickCard on tripod orchard ladders.
  test('of a ladder asks its length and whether it fell', () => {
    expect(checksFor('ladder').map(({ code }) => code)).toEqual(
      expect.arrayContaining(['not_over_16_ft', 'not_tipped_over'])
    )
  })
})

describe('the topics of a briefing', () => {
  test('each have a drawing of their own', () => {
    expect(new Set(topicCodes.map((code) => topicOf(code).drawing)).size).toBe(topicCodes.length)
  })
})

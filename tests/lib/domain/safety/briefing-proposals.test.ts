import { describe, expect, test } from 'vitest'

import {
  proposedTopics,
  questions,
  type Reason,
  type ShiftFacts,
  shadeFromC,
} from '@/lib/domain/safety/briefing-proposals'
import { type TopicCode, topicCodes } from '@/lib/domain/safety/briefing-topics'

const calm: ShiftFacts = {
  off: {},
  ladderTrees: 0,
  sawTrees: 0,
  hazards: [],
  diseased: [],
  minors: 0,
  round: 'after_harvest',
  heat: { isWave: false, newPeople: 0 },
}

test('on a calm day the signal and the tools are told, always', () => {
  expect(proposedTopics(calm)).toEqual([
    { code: 'stop_signal', reasons: [{ kind: 'always' }] },
    { code: 'tools', reasons: [{ kind: 'always' }] },
  ])
})

describe('a fact of the shift', () => {
  test.each<[Partial<ShiftFacts>, TopicCode, Reason[]]>([
    [{ ladderTrees: 4 }, 'ladders', [{ kind: 'ladder_trees', count: 4 }]],
    [{ sawTrees: 2 }, 'saws', [{ kind: 'saw_trees', count: 2 }]],
    [{ minors: 1 }, 'minors', [{ kind: 'minors', count: 1 }]],
    // UC IPM, Apricot r5100911: wounds made in wet months let Eutypa in.
    [
      { off: { apricot: 'season' } },
      'off_today',
      [{ kind: 'off', what: 'apricot', because: 'season' }],
    ],
    // 29 CFR 1910.269(x): distance to lines.
    [
      { hazards: [{ sign: 'power_line', tree: 7 }] },
      'lines',
      [{ kind: 'hazard', sign: 'power_line', trees: [7] }],
    ],
    [
      { hazards: [{ sign: 'nest', tree: 9 }] },
      'nests',
      [{ kind: 'hazard', sign: 'nest', trees: [9] }],
    ],
    [{ diseased: [{ block: 2, trees: 5 }] }, 'disease', [{ kind: 'disease', block: 2, trees: 5 }]],
    // Cal. Code Regs. Title 8 §3395 (g).
    [
      { heat: { isWave: true, newPeople: 2 } },
      'heat',
      [{ kind: 'heat_wave' }, { kind: 'new_in_heat', count: 2 }],
    ],
    // By the season alone, common practice, no source.
    [{ round: 'winter' }, 'cold', [{ kind: 'round', round: 'winter' }]],
    [{ round: 'summer' }, 'heat', [{ kind: 'round', round: 'summer' }]],
  ])('%o proposes %s and says why', (fact, code, reasons) => {
    const proposed = proposedTopics({ ...calm, ...fact })

    expect(proposed.filter((each) => !['stop_signal', 'tools'].includes(each.code))).toEqual([
      { code, reasons },
    ])
  })

  test('the trees of one hazard are named together, another hazard for itself', () => {
    const hazards = [
      { sign: 'hanging_limb', tree: 3 },
      { sign: 'crack', tree: 5 },
      { sign: 'hanging_limb', tree: 8 },
    ]

    expect(proposedTopics({ ...calm, hazards }).at(-1)).toEqual({
      code: 'keep_out',
      reasons: [
        { kind: 'hazard', sign: 'hanging_limb', trees: [3, 8] },
        { kind: 'hazard', sign: 'crack', trees: [5] },
      ],
    })
  })

  test('ladders off for the wind propose ladders and the wind', () => {
    const codes = proposedTopics({ ...calm, off: { ladder: 'wind' } }).map(({ code }) => code)

    expect(codes).toEqual(['stop_signal', 'tools', 'ladders', 'wind'])
  })

  test.each([
    ['rain', 'wet'],
    ['wet_wood', 'wet'],
    ['thunder', 'thunder'],
    ['heat', 'heat'],
  ])('off for %s proposes %s too', (because, code) => {
    const codes = proposedTopics({ ...calm, off: { apple: because } }).map((each) => each.code)

    expect(codes).toEqual(topicCodes.filter((each) => codes.includes(each)))
    expect(codes).toEqual(expect.arrayContaining(['off_today', code]))
  })
})

test('what the orchard cannot know is asked, the slope first', () => {
  const byItself = proposedTopics({ ...calm, round: 'winter', ladderTrees: 1 })

  expect(questions[0]).toBe('slope')
  expect(byItself.map(({ code }) => code)).not.toContain('slope')
})

test('shade is asked for from 80 °F', () => {
  // Cal. Code Regs. Title 8 §3395(d).
  expect((shadeFromC * 9) / 5 + 32).toBeCloseTo(80, 0)
})

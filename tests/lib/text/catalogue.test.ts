import { expect, test } from 'vitest'

import * as enCrew from '@/lib/text/en/crew'
import * as enLead from '@/lib/text/en/lead'
import { wentWrong as enWentWrong } from '@/lib/text/en/went-wrong'
import * as esCrew from '@/lib/text/es/crew'
import * as esLead from '@/lib/text/es/lead'
import { wentWrong as esWentWrong } from '@/lib/text/es/went-wrong'

const english = spoken({ ...enCrew.crew, ...enLead.lead, wentWrong: enWentWrong })
const spanish = spoken({ ...esCrew.crew, ...esLead.lead, wentWrong: esWentWrong })

/** The same in both languages, and rightly so. */
const sameInBoth = [
  'common.appName',
  'common.english',
  'common.spanish',
  'common.no',
  'wentWrong.appName',
  // only names and numbers
  'common.speciesAndCultivar',
  'ground.acres',
  'ground.hectares',
  'ground.no',
  'ground.north',
  'ground.patterns.hexagonal',
  'tools.labelled',
  'tree.age',
  'board.part',
  'proposals.hazard',
  'proposals.noTo',
  'board.seenAt',
  'referral.reportedBy',
  'mapTools.minutes',
  'leadMap.whyWith',
  'nextTree.way',
  'conditions.offBecause',
  'houseRules.unit.cm',
  'houseRules.unit.m',
  'houseRules.unit.km/h',
  'houseRules.unit.in',
  'houseRules.unit.ft',
  'houseRules.unit.mph',
  'houseRules.unit.°C',
  'houseRules.unit.°F',
]

test('both languages have the same messages', () => {
  expect([...spanish.keys()]).toEqual([...english.keys()])
})

test('no message was left in the other language', () => {
  const same = [...english].filter(([key, words]) => spanish.get(key) === words).map(([key]) => key)
  expect(same.sort()).toEqual([...sameInBoth].sort())
})

test.each([
  ['English', english],
  ['Spanish', spanish],
] as const)('every %s message says something and shows nothing raw', (_, messages) => {
  for (const [key, words] of messages) {
    expect(words.trim(), key).not.toBe('')
    expect(words, key).not.toMatch(/undefined|null|NaN|\[object|\$\{/)
    expect(words, key).not.toMatch(/ {2}| [.,:;?]/)
  }
})

test('nothing is ever called safe, in either language: we say what is known and who decides', () => {
  for (const words of [...english.values(), ...spanish.values()])
    expect(words).not.toMatch(/\b(is|are) safe\b|\bes segur|\bestá segur/i)
})

/** Every message by its path, functions called with stand-in words. */
function spoken(messages: object, path = ''): Map<string, string> {
  return new Map(
    Object.entries(messages).flatMap(([key, value]): [string, string][] => {
      const here = path === '' ? key : `${path}.${key}`
      if (typeof value === 'string') return [[here, value]]
      if (typeof value === 'function') return [[here, value(...standIns(here))]]
      return [...spoken(value, here)]
    })
  )
}

/** Refusals take one detail, here a full one; the others take words or numbers. */
function standIns(path: string): unknown[] {
  if (path.startsWith('refusals.'))
    return [
      {
        tree: 'S 7·14',
        person: 'Teo',
        whose: 'Ana',
        species: 'X',
        skill: 'X',
        tool: 'X',
        until: '9:40',
        reason: 'X',
      },
    ]
  if (path.startsWith('inventory.problems.')) return [{ column: 'row', found: 'X', allowed: '9' }]
  if (path.startsWith('audit.sentence.')) return [{ who: 'Teo', by: 'Ana' }]
  return [2, 3, 4]
}

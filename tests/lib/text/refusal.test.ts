import { readdirSync, readFileSync } from 'node:fs'
import { describe, expect, test } from 'vitest'

import { faultCodes } from '@/lib/events/answer'
import { crew as en } from '@/lib/text/en/crew'
import { crew as es } from '@/lib/text/es/crew'
import { faultSentence } from '@/lib/text/fault'
import { type RefusalCode, refusalInWords, refusalSentence } from '@/lib/text/refusal'

const codes = Object.keys(en.refusals) as RefusalCode[]
const texts = [
  ['English', en],
  ['Spanish', es],
] as const

const naming = {
  tree: (no: number) => `S 7·${no}`,
  person: (id: string) => ({ t: 'Teo', i: 'Inés' })[id] ?? '?',
  tool: (no: number) => `Saw ${no}`,
}

describe.each(texts)('in %s', (_, text) => {
  test.each(codes)('%s is a whole sentence with and without what it could name', (code) => {
    const detail = { tree: 'S 7·14', person: 'Teo', tool: 'Saw 14', until: '9:40', reason: 'X' }
    for (const known of [{}, detail, { ...detail, whose: 'Ana' }]) {
      const sentence = refusalSentence(text, code, known)
      expect(sentence).toMatch(/^[\p{Lu}\d].*\.$/su)
      expect(sentence).not.toMatch(/undefined|null/)
    }
  })

  test('every fault has a sentence', () => {
    for (const fault of faultCodes) expect(faultSentence(text, { fault })).toMatch(/\.$/)
  })
})

test('every code by which the referee refuses has a sentence', () => {
  const folder = 'supabase/migrations'
  const sql = readdirSync(folder).map((file) => readFileSync(`${folder}/${file}`, 'utf8'))
  const refused = [...sql.join('\n').matchAll(/private\.code\(\s*'([a-z_]+)'/g)].map(
    ([, code = '']) => code
  )

  expect(refused.length).toBeGreaterThan(40)
  expect(refused.filter((code) => !Object.hasOwn(en.refusals, code))).toEqual([])
})

test('names who was first and what to take instead', () => {
  const refusal = { code: 'tree_held', detail: { tree: 14, person: 't' } }
  const found = { ...naming, take: 'S 7·15' }

  expect(refusalInWords(en, refusal, found)).toBe('Teo holds S 7·14. Take S 7·15.')
  expect(refusalInWords(es, refusal, found)).toBe('Teo tiene S 7·14. Toma S 7·15.')
})

test.each([
  [
    { code: 'species_off', detail: { species: 'cherry', reason: 'rain' } },
    'No cherries today, because rain is too near. Take another kind.',
  ],
  [
    { code: 'skill_missing', detail: { skill: 'ladder' } },
    'You lack the skill ladder. Take another tree or ask your lead.',
  ],
  [
    { code: 'dealt_to_another', detail: { people: ['t', 'i'] } },
    'This tree is dealt to Teo, Inés. Take another.',
  ],
  [
    { code: 'trees_held', detail: { trees: [1, 2, 3, 4, 5, 6], claims: [] } },
    'Somebody still holds S 7·1, S 7·2, S 7·3, S 7·4 and 2 more. End it, or say why.',
  ],
  [
    { code: 'tool_failed', detail: { tool: 14 } },
    'Saw 14 is out of use. Give it back and take another.',
  ],
  [
    { code: 'adult_missing', detail: { person: 'i' } },
    'Inés, who answers for you, is not here. Wait, or ask your lead.',
  ],
  // what a server of another day might send
  [
    { code: 'skill_missing', detail: { skill: 'toString' } },
    'You lack the skill this tree asks for. Take another tree or ask your lead.',
  ],
  [
    { code: 'tree_held', detail: { tree: null, person: {} } },
    'Somebody holds this tree. Take another.',
  ],
])('%o', (refusal, sentence) => {
  expect(refusalInWords(en, refusal, naming)).toBe(sentence)
})

test('somebody else’s readiness is said of them', () => {
  const refusal = { code: 'briefing_not_signed', detail: { version: 3 } }
  expect(refusalInWords(en, refusal, { ...naming, whose: 'Ana' })).toBe(
    'Ana has not signed the briefing. Sign it first.'
  )
})

test('a code of a newer server still gets a sentence, and is told', () => {
  expect(refusalSentence(en, 'moon_too_full')).toContain('moon_too_full')
  expect(refusalSentence(en, 'toString')).toContain('toString')
})

test('the server’s own code is more exact than the kind of fault', () => {
  expect(faultSentence(en, { fault: 'unknown', code: 'no_such_tree' })).toBe(en.errors.gone)
  expect(faultSentence(en, { fault: 'busy', code: 'too_many' })).toBe(en.errors.too_many)
  expect(faultSentence(en, { fault: 'unknown', code: 'XX000' })).toContain('XX000')
})

import { readdirSync, readFileSync } from 'node:fs'
import { describe, expect, test } from 'vitest'

import { faultCodes } from '@/lib/events/answer'
import { crew as en } from '@/lib/text/en/crew'
import { crew as es } from '@/lib/text/es/crew'
import { faultSentence } from '@/lib/text/fault'
import { type RefusalCode, refusalSentence } from '@/lib/text/refusal'

const codes = Object.keys(en.refusals) as RefusalCode[]
const texts = [
  ['English', en],
  ['Spanish', es],
] as const

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

describe('every code in the sources has a sentence', () => {
  const sql = textsIn('supabase/migrations')
  const rules = textsIn('lib/events')
  const client = ['lib/data', 'lib/state', 'lib/sync', 'lib/hooks'].map(textsIn).join('\n')

  test.each([
    [
      'by which the referee refuses',
      sql,
      /(?:private\.code\(|build_object\('code',)\s*'([a-z_]+)'/g,
      40,
    ],
    ['by which the referee does not deal', sql, /\bselect '([a-z_]+)' where/g, 1],
    ['by which a phone refuses before it asks', rules, /\bcode: '([a-z_]+)'/g, 30],
    ['by which a phone refuses what it foresees', rules, /&& '([a-z_]+)'(?! in\b)/g, 20],
  ])('%s', (_, text, pattern, atLeast) => {
    const refused = codesIn(text, pattern)

    expect(refused.length).toBeGreaterThanOrEqual(atLeast)
    expect(refused.filter((code) => !Object.hasOwn(en.refusals, code))).toEqual([])
  })

  test.each([
    ['with which the referee fails', sql, /private\.fail\(\s*\d+,\s*'([a-z_]+)'/g, 15],
    ['with which a phone fails by itself', client, /\bcode: '([a-z_]+)'/g, 3],
  ])('%s', (_, text, pattern, atLeast) => {
    const failed = codesIn(text, pattern)
    // As for something nobody has words for.
    const wordless = (code: string) => en.errors.unknown(code)

    expect(failed.length).toBeGreaterThanOrEqual(atLeast)
    for (const code of failed) {
      const kind = faultCodes.find((fault) => fault === code) ?? 'unknown'
      expect(faultSentence(en, { fault: kind, code })).not.toBe(wordless(code))
    }
  })
})

test('names who was first and what to take instead', () => {
  const detail = { tree: 'S 7·14', person: 'Teo', take: 'S 7·15' }
  expect(refusalSentence(en, 'tree_held', detail)).toBe('Teo holds S 7·14. Take S 7·15.')
  expect(refusalSentence(es, 'tree_held', detail)).toBe('Teo tiene S 7·14. Toma S 7·15.')
})

test('says why a species is off, and what to do instead', () => {
  const detail = { species: en.species.cherry.many, reason: en.things.offReason.rain }
  expect(refusalSentence(en, 'species_off', detail)).toBe(
    'No cherries today, because rain is too near. Take another kind.'
  )
})

test('somebody else’s readiness is said of them', () => {
  expect(refusalSentence(en, 'briefing_not_signed', { whose: 'Ana' })).toBe(
    'Ana has not signed the briefing. Sign it first.'
  )
  expect(refusalSentence(en, 'adult_missing', { person: 'Inés' })).toBe(
    'Inés, who answers for you, is not here. Wait, or ask your lead.'
  )
})

test('a code of a newer server still gets a sentence, and is told', () => {
  expect(refusalSentence(en, 'moon_too_full')).toContain('moon_too_full')
  expect(refusalSentence(en, 'toString')).toContain('toString')
})

test('the server’s own code is more exact than the kind of fault', () => {
  expect(faultSentence(en, { fault: 'unknown', code: 'no_such_tree' })).toBe(en.errors.gone)
  expect(faultSentence(en, { fault: 'busy', code: 'too_many' })).toBe(en.errors.too_many)
  expect(faultSentence(es, { fault: 'signed_out', code: 'other_login' })).toBe(
    es.errors.other_login
  )
  expect(faultSentence(en, { fault: 'unknown', code: 'not_kept' })).toBe(en.errors.not_kept)
  expect(faultSentence(en, { fault: 'unknown', code: 'XX000' })).toContain('XX000')
})

function textsIn(folder: string): string {
  const files = readdirSync(folder).filter((file) => /\.(?:sql|tsx?)$/.test(file))
  return files.map((file) => readFileSync(`${folder}/${file}`, 'utf8')).join('\n')
}

function codesIn(text: string, pattern: RegExp): string[] {
  return [...new Set([...text.matchAll(pattern)].map(([, code = '']) => code))]
}

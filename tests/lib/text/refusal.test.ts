import { describe, expect, test } from 'vitest'

import { crew as en } from '@/lib/text/en/crew'
import { crew as es } from '@/lib/text/es/crew'
import { type RefusalCode, refusalSentence } from '@/lib/text/refusal'

const codes = Object.keys(en.refusals) as RefusalCode[]

describe.each([
  ['en', en],
  ['es', es],
] as const)('in %s', (_, text) => {
  test.each(codes)('%s is a whole sentence with and without what it could name', (code) => {
    const detail = { tree: 'S 7·14', person: 'Teo', tool: 'Saw 14', until: '9:40', reason: 'X' }
    for (const sentence of [refusalSentence(text, code), refusalSentence(text, code, detail)]) {
      expect(sentence).toMatch(/^[\p{Lu}\d].*\.$/su)
      expect(sentence).not.toMatch(/undefined|null/)
    }
  })
})

test('names who was first and what to take instead', () => {
  const detail = { tree: 'S 7·14', person: 'Teo', take: 'S 7·15' }
  expect(refusalSentence(en, 'tree_held', detail)).toBe('Teo holds S 7·14. Take S 7·15.')
  expect(refusalSentence(es, 'tree_held', detail)).toBe('Teo tiene S 7·14. Toma S 7·15.')
})

test('a code of a newer server still gets a sentence, and is told', () => {
  expect(refusalSentence(en, 'moon_too_full')).toContain('moon_too_full')
  expect(refusalSentence(en, 'toString')).toContain('toString')
})

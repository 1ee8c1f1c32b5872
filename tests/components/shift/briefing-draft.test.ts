import { expect, test } from 'vitest'

import {
  emptyTopic,
  isWritten,
  lacksFacts,
  moved,
  ownTopic,
  topicArgs,
  topicsLeft,
  withFacts,
} from '@/components/shift/briefing-draft'

const topics = [emptyTopic('stop_signal'), emptyTopic('tools'), emptyTopic('wind')]

test('a topic is moved to its new place and nothing else changes its order', () => {
  expect(moved(topics, 2, 0).map(({ code }) => code)).toEqual(['wind', 'stop_signal', 'tools'])
  expect(moved(topics, 0, 1).map(({ code }) => code)).toEqual(['tools', 'stop_signal', 'wind'])
})

test('a topic of our own has sentences; one of the lead’s needs words before it is put out', () => {
  expect(isWritten(topics)).toBe(true)
  expect(isWritten([])).toBe(false)
  const own = ownTopic(topics)
  expect(isWritten([...topics, own])).toBe(false)
  expect(isWritten([...topics, { ...own, es: 'Perros sueltos' }])).toBe(true)
})

test('topics of the lead’s own never share a code', () => {
  const first = ownTopic(topics)
  expect(ownTopic([...topics, first]).code).not.toBe(first.code)
})

test('what is told already is not offered again', () => {
  expect(topicsLeft(topics)).not.toContain('wind')
  expect(topicsLeft(topics)).toContain('heat')
})

test('empty words are left out of what is sent', () => {
  expect(topicArgs([{ code: 'wind', en: ' Row 3 ', es: ' ' }])).toEqual([
    { code: 'wind', en: 'Row 3' },
  ])
})

test('facts are put before what the lead wrote, once, and asked for again when they are others', () => {
  const facts = { en: 'Nest: A 1·3.', es: 'Nido: A 1·3.' }
  const written = { code: 'nests', en: 'By the gate', es: '' }

  const told = withFacts(written, facts)

  expect(told).toEqual({ code: 'nests', en: 'Nest: A 1·3.\nBy the gate', es: 'Nido: A 1·3.' })
  expect([lacksFacts(written, facts), lacksFacts(told, facts)]).toEqual([true, false])
  expect(withFacts(told, facts)).toEqual(told)
  expect(lacksFacts(told, { en: 'Nest: A 1·3, A 2·1.', es: 'Nido: A 1·3, A 2·1.' })).toBe(true)
  expect(lacksFacts(written, { en: '', es: '' })).toBe(false)
})

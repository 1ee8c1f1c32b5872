import { expect, test } from 'vitest'

import { topicWords } from '../../../components/ready/topic-words'
import { crew as en } from '../../../lib/text/en/crew'
import { crew as es } from '../../../lib/text/es/crew'

test('a known topic has our title and sentences, and where they come from', () => {
  const words = topicWords({ code: 'ladders', en: null, es: null }, 'en', en)

  expect(words.title).toBe(en.topics.ladders.title)
  expect(words.says).toHaveLength(3)
  expect(words.source).toMatchObject({ kind: 'published' })
  expect(words.own).toBeNull()
})

test('the words of the lead stand beside ours, in the language of the reader', () => {
  const topic = { code: 'lines', en: 'Rows 1 to 3.', es: 'Filas 1 a 3.' }
  expect(topicWords(topic, 'es', es).own).toEqual({ words: 'Filas 1 a 3.', lang: 'es' })
})

test('words in the other language are better than none, and say which it is', () => {
  const topic = { code: 'lines', en: 'Rows 1 to 3.', es: ' ' }
  expect(topicWords(topic, 'es', es).own).toEqual({ words: 'Rows 1 to 3.', lang: 'en' })
})

test('a topic of the lead’s own is called by its first line', () => {
  const topic = { code: 'own_1', en: 'The bridge is wet\nOne at a time.', es: null }
  expect(topicWords(topic, 'en', en)).toMatchObject({
    code: null,
    title: 'The bridge is wet',
    own: { words: 'One at a time.', lang: 'en' },
    says: [],
  })
})

test.each(Object.entries(en.topics))(
  'the topic %s is three sentences in both languages',
  (code) => {
    const both = [en, es].map((words) => words.topics[code as keyof typeof en.topics].says.length)
    expect(both).toEqual([3, 3])
  }
)

import { expect, test } from 'vitest'

import { languageFor } from '@/lib/text/language'
import { leadMessages, messages } from '@/lib/text/messages'
import { speciesWords } from '@/lib/text/species'
import { treeTag } from '@/lib/text/tree-name'

test.each([
  [undefined, null, 'en'],
  [undefined, 'es-MX,es;q=0.9,en;q=0.8', 'es'],
  [undefined, 'en;q=0.4, es;q=0.7', 'es'],
  [undefined, 'fr-FR,de', 'en'],
  [undefined, 'fr, es;q=0', 'en'],
  ['es', 'en-US,en', 'es'],
  ['xx', 'es', 'es'],
  [undefined, ';;q=,,', 'en'],
])('chosen %s, asked %s: %s', (chosen, acceptLanguage, language) => {
  expect(languageFor(chosen, acceptLanguage)).toBe(language)
})

test('messages come in the language asked for, and the same promise again', async () => {
  expect((await messages('es')).common.strip.stopWork).toBe('Parar todo')
  expect((await leadMessages('en')).people.title).toBe('People')
  expect(messages('en')).toBe(messages('en'))
})

test('a species without a word of ours is called as the orchard wrote it', async () => {
  expect(speciesWords(await messages('es'), 'star_apple').name).toBe('star apple')
  expect(speciesWords(await messages('es'), 'constructor').name).toBe('constructor')
})

test('a tree’s tag', () => {
  expect(treeTag({ block: 'S', row: 7, place: 14 })).toBe('S 7·14')
})

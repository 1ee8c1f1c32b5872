import { expect, test } from 'vitest'

import { languageFor } from '@/lib/text/language'
import { leadMessages, messages } from '@/lib/text/messages'
import { capitalised, speciesWords } from '@/lib/text/species'
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

test('the claim is confirmed in words a person would say', async () => {
  const en = await messages('en')
  const es = await messages('es')

  expect(claimWords(en, 'cherry', 'plum', 'fourth')).toBe(
    'Row 7, fourth from the tagged end. A cherry, between two plums. Is it?'
  )
  expect(claimWords(es, 'cherry', 'plum', 'cuarto')).toBe(
    'Fila 7, el cuarto desde el extremo marcado. Un cerezo, entre dos ciruelos. ¿Es este?'
  )
})

test('a species without a word of ours is called as the orchard wrote it', async () => {
  expect(speciesWords(await messages('es'), 'star_apple').name).toBe('star apple')
  expect(speciesWords(await messages('es'), 'constructor').name).toBe('constructor')
})

test('a tree’s tag', () => {
  expect(treeTag({ block: 'S', row: 7, place: 14 })).toBe('S 7·14')
})

function claimWords(
  text: Awaited<ReturnType<typeof messages>>,
  species: string,
  neighbours: string,
  place: string
): string {
  const { rowAndPlace, standsBetween, isIt } = text.nextTree
  const tree = capitalised(speciesWords(text, species).a)
  return [
    rowAndPlace(7, place),
    standsBetween(tree, speciesWords(text, neighbours).many),
    isIt,
  ].join(' ')
}

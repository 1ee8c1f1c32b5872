import { expect, test } from 'vitest'

import { briefingChanges, type ToldTopic } from '@/lib/domain/safety/briefing-changes'

const topic = (code: string, en: string | null = null, es: string | null = null): ToldTopic => ({
  code,
  en,
  es,
})
const codes = (before: ToldTopic[], after: ToldTopic[]) =>
  Object.fromEntries(
    Object.entries(briefingChanges(before, after)).map(([kind, topics]) => [
      kind,
      topics.map(({ code }) => code),
    ])
  )

test('what came, what has other words, what went, what stayed', () => {
  const before = [topic('tools'), topic('heat', 'Shade by the well'), topic('wind')]
  const after = [topic('nests', 'By the gate'), topic('tools'), topic('heat', 'Shade by the barn')]

  expect(codes(before, after)).toEqual({
    added: ['nests'],
    reworded: ['heat'],
    leftOut: ['wind'],
    same: ['tools'],
  })
})

test('another order alone changes nothing that is said', () => {
  const topics = [topic('tools'), topic('heat')]

  expect(codes(topics, topics.toReversed())).toEqual({
    added: [],
    reworded: [],
    leftOut: [],
    same: ['heat', 'tools'],
  })
})

test('other words in either language are other words; none and empty are the same', () => {
  const before = [topic('heat', 'Shade'), topic('wind', '', null)]
  const after = [topic('heat', 'Shade', 'Sombra'), topic('wind')]

  expect(codes(before, after)).toMatchObject({ reworded: ['heat'], same: ['wind'] })
})

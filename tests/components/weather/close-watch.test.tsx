import { renderToStaticMarkup } from 'react-dom/server'
import { expect, test } from 'vitest'

import { CloseWatchLines } from '@/components/weather/CloseWatchLines'
import type { CloseWatch } from '@/components/weather/use-close-watch'
import { formatFor } from '@/lib/text/format'
import type { Language } from '@/lib/text/language'
import { leadMessages } from '@/lib/text/messages'

const before = [20, 20, 20, 20, 20]
const hot: CloseWatch = {
  highs: { expected: 31, reached: 24, before },
  heatWave: 'yes',
  isWarm: true,
  newPeople: [
    { id: 'Ann', day: 1 },
    { id: 'Bo', day: 1 },
    { id: 'Cy', day: 9 },
  ],
}

async function shown(watch: CloseWatch, language: Language = 'en'): Promise<string> {
  const { closeWatch } = await leadMessages(language)
  const format = formatFor({ language, units: 'us', timeZone: 'UTC' })
  return renderToStaticMarkup(
    <CloseWatchLines watch={watch} text={closeWatch} format={format} nameOf={(id) => id} />
  )
}

test('in a heat wave everybody is watched, and who is new is named, newest first', async () => {
  const lines = await shown(hot)

  expect(lines).toContain('Heat wave: today up to 88 °F, and 68 °F on average')
  expect([...lines.matchAll(/<li>(.*?)<\/li>/g)].map(([, line]) => line)).toEqual([
    'Ann and Bo: first day here',
    'Cy: day 9 of the first 14',
  ])
  expect(lines).toContain('Local rules win.')
})

test('the same in Spanish', async () => {
  const lines = await shown(hot, 'es')

  expect(lines).toContain('Ola de calor: hoy hasta 88 °F')
  expect(lines).toContain('Ann y Bo: primer día aquí')
  expect(lines).toContain('Mandan las normas locales.')
})

test('what is not known is said, and never as a no', async () => {
  const lines = await shown({ ...hot, heatWave: 'unknown', newPeople: null })

  expect(lines).toContain('Not known whether it is a heat wave')
  expect(lines).toContain('Who is new could not be read')
})

test('names stand there on a warm day only', async () => {
  const cool: CloseWatch = { ...hot, heatWave: 'no', isWarm: false }

  expect(await shown(cool)).toContain('3 people here are in their first 14 days')
  expect(await shown(cool)).not.toContain('Ann')
  expect(await shown({ ...cool, newPeople: [] })).toBe('')
})

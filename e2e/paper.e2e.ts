import { randomUUID } from 'node:crypto'

import type { Locator } from '@playwright/test'

import { clockAheadHours } from './support/morning'
import { loseSignal } from './support/phone'
import { expect, routes, test } from './support/test'

const minuteMs = 60_000

test('the printed day has every tree of a row once, also without signal', async ({
  orchard,
  asPerson,
}) => {
  const hazard = { kind: 'arborist', sign: 'hanging_limb', severity: 'danger_now' } as const
  await orchard.must('Bo', 'flag_tree', { tree: 30, ...hazard, keepOutM: 1 })
  await orchard.must('Lee', 'deal_trees', { trees: [14], to: [orchard.idOf('Ann')] })
  const lee = await asPerson('Lee', { device: 'tablet' })
  await lee.goto(routes.shift())
  await lee.getByRole('link', { name: 'Print the day' }).tap()
  const trees = lee.getByRole('table', { name: 'Trees: Varnholt' })
  await expect(trees).toBeVisible()
  await loseSignal(lee)

  await lee.emulateMedia({ media: 'print' })

  await expect(lee.getByRole('heading', { name: 'Print the day' })).toBeHidden()
  const heads = await trees.getByRole('rowheader').allInnerTexts()
  const tags = heads.flatMap((head) => /^A \d+·\d+/.exec(head)?.[0] ?? [])
  const every = [1, 2, 3].flatMap((row) =>
    Array.from({ length: 12 }, (_, place) => `A ${row}·${place + 1}`)
  )
  expect(tags).toEqual(every)
  await expect(rowOf(trees, 'A 2·2')).toContainText('for Ann')
  await expect(rowOf(trees, 'A 3·6')).toContainText('Arborist only: Broken limb hanging')
  await expect(lee.getByRole('region', { name: 'Cover and emergency card' })).toContainText('112')
  await expect(lee.getByRole('table', { name: 'Sign in and out' })).toContainText('Di')
  // Nothing runs off the side of a sheet.
  const width = await lee.evaluate(() => document.documentElement.scrollWidth)
  expect(width).toBeLessThanOrEqual(820)
})

test('what was written is entered with its time, a phone shows it, and the record adds up', async ({
  orchard,
  asPerson,
}) => {
  const claim = randomUUID()
  await orchard.must('Ann', 'claim_tree', { tree: 1 }, claim)
  await orchard.must('Ann', 'finish_tree', { tree: 1, claim })
  const lee = await asPerson('Lee', { device: 'tablet' })
  const ann = await asPerson('Ann')
  const [came, halfDone, finished] = [50, 30, 20].map(clockMinutesAgo)
  await lee.goto(routes.shift())
  await lee.getByRole('link', { name: 'From paper' }).tap()

  await lee.getByRole('combobox', { name: 'Who' }).selectOption('Di')
  await lee.getByRole('textbox', { name: 'Tree' }).fill('2 3')
  await lee.getByRole('textbox', { name: 'When it was done' }).fill(`${halfDone}`)
  await lee.getByRole('textbox', { name: 'Half done' }).fill('60')
  await lee.getByRole('textbox', { name: 'Note' }).fill('The top is left.')
  await lee.keyboard.press('Enter')
  await lee.getByRole('textbox', { name: 'Tree' }).fill('the big one')
  await lee.keyboard.press('Enter')
  await expect(lee.getByText('No tree has this tag.')).toBeVisible()
  await lee.getByRole('textbox', { name: 'Tree' }).fill('a2/5')
  await lee.getByRole('textbox', { name: 'When it was done' }).fill(`${finished}`.replace(':', ''))
  await lee.keyboard.press('Enter')
  await lee.getByText('Came and went').tap()
  await lee.getByRole('combobox', { name: 'Who' }).selectOption('Di')
  await lee.getByRole('textbox', { name: 'Came' }).fill(`${came}`)
  await lee.keyboard.press('Enter')
  // Lines that are not sent survive whatever happens to the page.
  await expect(lee.getByRole('heading', { name: '3 lines' })).toBeVisible()
  await lee.reload()
  await lee.getByRole('button', { name: 'Send 3 lines' }).tap()

  await expect(lee.getByText('Every line is sent.')).toBeVisible()
  const lines = lee.getByRole('main').getByRole('listitem')
  await expect(lines.filter({ hasText: 'A 2·3, 60% done' })).toContainText('What was missing then')
  await expect(lines.filter({ hasText: 'A 2·5, finished' })).not.toContainText('arrived')
  await ann.goto(routes.tree(15))
  await expect(ann.getByRole('listitem').filter({ hasText: 'The top is left.' })).toContainText(
    `Di, ${halfDone}`
  )
  await lee.goto(routes.shift())
  await lee.getByRole('button', { name: 'Count up to now' }).tap()
  const numbers = lee.getByRole('region', { name: 'The day in numbers' }).first()
  await expect(numbers).toContainText(/4 people, .* worked, 2 trees done, 1 half done\./)
  await expect(numbers.getByRole('row').filter({ hasText: 'Di' })).toContainText(/(49|50|51) min/)
  const saved = lee.waitForEvent('download')
  await numbers.getByRole('button', { name: 'Save as a table (CSV)' }).tap()
  expect((await saved).suggestedFilename()).toMatch(/^rowcall-\d{4}-\d\d-\d\d\.csv$/)
})

function rowOf(table: Locator, tag: string): Locator {
  return table.getByRole('row', { name: new RegExp(`^${tag}\\D`) })
}

/** On the orchard's clock. */
function clockMinutesAgo(minutes: number): string {
  const there = Date.now() + clockAheadHours(Date.now()) * 60 * minuteMs
  return new Date(there - minutes * minuteMs).toISOString().slice(11, 16).replace(/^0/, '')
}

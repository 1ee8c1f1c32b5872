import { randomUUID } from 'node:crypto'

import type { Orchard } from './support/orchard'
import { expect, type Page, routes, test } from './support/test'

const words = 'The forked limb on the north side'

/** A form of a lead that takes words: where it is, how it is opened, and the field. */
type Form = {
  of: string
  open: (page: Page, orchard: Orchard) => Promise<void>
  field: (page: Page) => ReturnType<Page['getByLabel']>
}

const forms: readonly Form[] = [
  {
    of: 'adding a person',
    open: async (page) => {
      await page.goto(routes.people())
      await page.getByRole('button', { name: 'Add a person' }).tap()
    },
    field: (page) => page.getByRole('dialog').getByLabel('Name', { exact: true }),
  },
  {
    of: 'marking big cuts',
    open: async (page) => {
      await page.goto(routes.map(3))
      await page.getByRole('button', { name: 'Mark the big cuts' }).tap()
    },
    field: (page) => page.getByRole('dialog').getByLabel('Which limbs?'),
  },
  {
    of: 'an incident',
    open: async (page) => {
      await page.goto(routes.calls())
      await page.getByRole('button', { name: 'Write an incident' }).tap()
    },
    field: (page) => page.getByRole('dialog').getByLabel('What happened, and what was done'),
  },
  {
    of: 'withdrawing a flag',
    open: async (page) => {
      await page.goto(routes.flags())
      await page.getByRole('button', { name: 'Withdraw' }).first().tap()
    },
    field: (page) => page.getByRole('dialog').getByLabel('Why is it not disease?'),
  },
  {
    of: 'a topic of the briefing',
    open: async (page) => {
      await page.goto(routes.shift())
      await page.getByRole('button', { name: 'Change the briefing' }).tap()
      await page
        .getByRole('button', { name: /^In your own words/ })
        .first()
        .tap()
    },
    field: (page) => page.getByRole('textbox', { name: /In English/ }).first(),
  },
  {
    of: 'why somebody is not counted out',
    open: async (page) => {
      await page.goto(routes.shift())
      await page.getByRole('button', { name: 'Close the shift' }).tap()
      await page.locator('label').filter({ hasText: 'In your own words' }).first().tap()
    },
    field: (page) => page.getByRole('textbox', { name: /^Why: / }).first(),
  },
]

for (const { of, open, field } of forms) {
  test(`what a lead was typing is there after a stop and a turned tablet: ${of}`, async ({
    orchard,
    asPerson,
  }) => {
    await orchard.must('Ann', 'flag_tree', {
      tree: 5,
      kind: 'disease',
      sign: 'canker',
      severity: 'high',
    })
    const lee = await asPerson('Lee', { device: 'tablet' })
    await open(lee, orchard)
    await field(lee).fill(words)

    const stop = randomUUID()
    await orchard.must('Ann', 'stop_work', {}, stop)
    await expect(lee.getByRole('alertdialog')).toBeVisible()
    await lee.setViewportSize({ width: 1180, height: 820 })
    await lee.getByRole('button', { name: 'I have stopped' }).tap()
    await expect(lee.getByRole('alertdialog')).toHaveCount(0)
    await expect(field(lee)).toHaveValue(words)

    await orchard.must('Lee', 'resume_work', { stop })
    await lee.getByRole('button', { name: 'I have heard it' }).tap()
    await lee.setViewportSize({ width: 820, height: 1180 })
    await expect(field(lee)).toHaveValue(words)
  })
}

import { randomUUID } from 'node:crypto'

import type { Orchard } from './support/orchard'
import { findSignal, loseSignal } from './support/phone'
import { expect, routes, test } from './support/test'

/** Ann prunes trees 1 to 3 of row 1. */
async function withWood(orchard: Orchard): Promise<void> {
  for (const tree of [1, 2, 3]) {
    const claim = randomUUID()
    await orchard.must('Ann', 'claim_tree', { tree }, claim)
    await orchard.must('Ann', 'finish_tree', { tree, claim })
  }
}

test('a volunteer hauls a row instead of a tree, another joins, and the lead sees who and how far', async ({
  orchard,
  asPerson,
}) => {
  await withWood(orchard)
  const lee = await asPerson('Lee', { device: 'tablet' })
  const ann = await asPerson('Ann')
  const bo = await asPerson('Bo')
  await lee.goto(routes.brush())
  const row = lee.getByRole('button', { name: /^Row A 1/ })
  await expect(row).toContainText('under 3 trees')
  await lee.getByText('burn', { exact: true }).tap()
  await expect(row).toContainText('burn')

  await ann.goto(routes.nextTree())
  await ann.getByRole('link', { name: 'Haul brush instead' }).tap()
  await expect(ann.getByText('To the place where it is burned')).toBeVisible()
  await ann.getByRole('button', { name: 'Take this row' }).tap()
  await expect(ann.getByRole('heading', { name: 'You haul row A 1' })).toBeVisible()
  await bo.goto(routes.haul())
  await bo.getByRole('button', { name: 'Join Ann' }).tap()
  await expect(bo.getByRole('heading', { name: 'You haul row A 1' })).toBeVisible()
  await expect(row).toContainText('Ann and Bo at it')

  await lee.goto(routes.map())
  const crew = lee.getByRole('list', { name: 'Crew' })
  await expect(crew.getByText('hauls brush, row A 1')).toHaveCount(2)
  await ann.getByRole('radio', { name: 'Only a part' }).check({ force: true })
  await ann.getByLabel('to tree').selectOption('2')
  await ann.getByRole('button', { name: 'Hand it back like this' }).tap()

  await expect(ann).toHaveURL(routes.nextTree())
  await expect(crew.getByText('hauls brush, row A 1')).toHaveCount(0)
  await lee.goto(routes.brush())
  await expect(row).toContainText('under 1 tree, 2 hauled')
})

test('without signal a row in hand is finished, and it goes out by itself', async ({
  orchard,
  asPerson,
}) => {
  await withWood(orchard)
  await orchard.must('Ann', 'take_brush', { block: 1, row: 1 })
  const lee = await asPerson('Lee', { device: 'tablet' })
  const ann = await asPerson('Ann')
  await lee.goto(routes.brush())
  await ann.goto(routes.haul())
  await expect(ann.getByRole('heading', { name: 'You haul row A 1' })).toBeVisible()
  await loseSignal(ann)

  await ann.getByRole('button', { name: 'The row is hauled' }).tap()
  await expect(ann.getByRole('status').filter({ hasText: '1 kept' })).toBeVisible()
  await expect(lee.getByText('Cut wood lies in 1 row')).toBeVisible()
  await findSignal(ann)

  await expect(lee.getByText('No cut wood lies anywhere')).toBeVisible()
})

test('who hauls reads which wood goes apart', async ({ orchard, asPerson }) => {
  await withWood(orchard)
  const canker = { kind: 'disease', sign: 'canker', severity: 'low' } as const
  await orchard.must('Bo', 'flag_tree', { tree: 2, ...canker })
  const bo = await asPerson('Bo')

  await bo.goto(routes.haul())

  await expect(bo.getByText('Wood of A 1·2 apart, bagged or burned.')).toBeVisible()
})

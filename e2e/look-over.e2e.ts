import { randomUUID } from 'node:crypto'

import { makeReady } from './support/day'
import type { Orchard, PersonName } from './support/orchard'
import { expect, type Page, routes, test } from './support/test'

async function finish(orchard: Orchard, who: PersonName, tree: number): Promise<void> {
  const claim = randomUUID()
  await orchard.must(who, 'claim_tree', { tree }, claim)
  await orchard.must(who, 'finish_tree', { tree, claim })
}

test('a lead passes one tree and reopens another; who pruned it reads what to do better, nobody else does', async ({
  orchard,
  asPerson,
}) => {
  await finish(orchard, 'Ann', 1)
  await finish(orchard, 'Bo', 2)
  const ann = await asPerson('Ann')
  const bo = await asPerson('Bo')
  await ann.goto(routes.nextTree())
  await bo.goto(routes.nextTree())
  const lee = await asPerson('Lee', { device: 'tablet' })
  await lee.goto(routes.lookOver())
  await expect(lee.getByRole('heading', { name: '2 trees to look over' })).toBeVisible()

  // One of each person: Bo began last, so Bo's comes first.
  await expect(lee.getByRole('region', { name: 'A 1·2' })).toContainText('Nothing of Bo’s')
  await lee.getByRole('button', { name: 'Pass', exact: true }).tap()
  await expect(lee.getByRole('region', { name: 'A 1·1' })).toContainText('Nothing of Ann’s')
  await lee.getByRole('button', { name: 'Reopen', exact: true }).tap()
  await lee.getByRole('button', { name: /^Stubs left/ }).tap()

  await expect(lee.getByRole('heading', { name: 'Nothing to look over' })).toBeVisible()
  await expect(ann.getByText('A 1·1 was looked over by Lee. Stubs left.')).toBeVisible()
  await expect(ann.getByText('Lee dealt it to you')).toBeVisible()
  await expect(bo.getByText('Looked over and passed')).toBeVisible()
  await expect(bo.getByText('Stubs left')).toHaveCount(0)

  await ann.getByRole('button', { name: 'Claim this tree' }).tap()
  await ann.getByRole('button', { name: 'Yes, claim it' }).tap()
  await expect(ann).toHaveURL(routes.tree(1))
  await expect(ann.getByText('Cut back to a side branch or to the collar')).toBeVisible()
})

test('beside the map a tree is passed too, and the other leads see it at once', async ({
  orchard,
  asPerson,
}) => {
  await finish(orchard, 'Ann', 1)
  const mo = await asPerson('Mo', { device: 'desktop' })
  const lee = await asPerson('Lee', { device: 'tablet' })
  await lee.goto(routes.lookOver())
  await expect(lee.getByRole('heading', { name: '1 tree to look over' })).toBeVisible()
  await mo.goto(routes.map(1))

  await mo.getByRole('button', { name: 'Pass', exact: true }).click()

  await expect(mo.getByRole('complementary')).toContainText('Looked over and passed')
  await expect(lee.getByRole('heading', { name: 'Nothing to look over' })).toBeVisible()
})

test('what a lead is writing about a tree outlives a late answer about the last one, and a tree that somebody else finishes', async ({
  orchard,
  asPerson,
}) => {
  await makeReady(orchard, 'Cy', 'P3')
  await finish(orchard, 'Ann', 3)
  await finish(orchard, 'Cy', 12)
  await finish(orchard, 'Bo', 2)
  const lee = await asPerson('Lee', { device: 'tablet' })
  await lee.goto(routes.lookOver())
  await expect(lee.getByRole('region', { name: 'A 1·2' })).toBeVisible()
  const letAnswerThrough = await holdBack(lee, '**/rpc/look_over')
  await lee.getByRole('button', { name: 'Pass', exact: true }).tap()

  // Cy is newer than Ann, but the lead stands beside Ann's tree.
  await expect(lee.getByRole('region', { name: 'A 1·3' })).toBeVisible()
  await lee.getByRole('button', { name: 'Reopen', exact: true }).tap()
  const note = lee.getByRole('textbox')
  await note.fill('North side, at shoulder height')
  letAnswerThrough()
  await expect(lee.getByRole('status').filter({ hasText: 'everything sent' })).toBeAttached()
  await finish(orchard, 'Bo', 4)

  await expect(lee.getByRole('heading', { name: '3 trees to look over' })).toBeVisible()
  await expect(lee.getByRole('region', { name: 'A 1·3' })).toBeVisible()
  await expect(note).toHaveValue('North side, at shoulder height')
})

/** As on one bar: what is asked there waits until it is let through. */
async function holdBack(page: Page, where: string): Promise<() => void> {
  let letThrough = () => {}
  const through = new Promise<void>((resolve) => {
    letThrough = resolve
  })
  await page.route(where, async (route) => {
    await through
    await route.continue()
  })
  return letThrough
}

import { randomUUID } from 'node:crypto'

import type { Locator } from '@playwright/test'

import { canopyPhoto } from './support/photo'
import { expect, routes, test } from './support/test'

test('a lead sees that a disease is clustered, and deals the trees round it', async ({
  orchard,
  asPerson,
}) => {
  const canker = { sign: 'canker', severity: 'low' } as const
  for (const tree of [1, 2, 3, 13, 14, 15]) {
    const flag = randomUUID()
    await orchard.must('Bo', 'flag_tree', { tree, kind: 'disease', ...canker }, flag)
    if (tree < 14) await orchard.must('Lee', 'confirm_flag', { flag, ...canker })
  }
  const lee = await asPerson('Lee', { device: 'tablet' })
  let workers = 0
  lee.on('worker', () => workers++)
  await lee.goto(routes.map())
  await lee.getByRole('button', { name: 'Disease', exact: true }).tap()
  await lee.getByRole('link', { name: 'Disease map' }).tap()

  await expect(
    lee.getByRole('heading', { level: 1, name: /Clustered: about four times as many/ })
  ).toBeVisible()
  await expect(lee.getByText('4 confirmed, 2 only suspected.')).toBeVisible()
  expect(workers, 'counted beside the page, as the policy allows').toBeGreaterThan(0)
  const list = lee.getByRole('list', { name: 'Look at 6 trees' })
  await expect(list.getByRole('listitem')).toHaveText([
    /A 1·4/,
    /A 2·4/,
    /A 3·1/,
    /A 3·2/,
    /A 3·3/,
    /A 3·4/,
  ])
  await lee.locator('label').filter({ hasText: 'Confirmed only' }).tap()
  await expect(lee.getByText('4 confirmed, 0 only suspected.')).toBeVisible()
  await lee.locator('label').filter({ hasText: 'All' }).first().tap()

  await lee.getByRole('button', { name: /Pick 6 trees to deal/ }).tap()
  const bar = lee.getByRole('region', { name: 'Pick to deal' })
  await bar.locator('label').filter({ hasText: 'Ann' }).first().tap()
  await bar.getByRole('button', { name: 'Deal 6 to Ann' }).tap()
  await expect(lee.getByText('6 trees are dealt to Ann.')).toBeVisible()
})

test('a crown is more open after pruning, and the photos stay on the phone', async ({
  orchard,
  asPerson,
}) => {
  await orchard.must('Ann', 'claim_tree', { tree: 5 })
  const ann = await asPerson('Ann')
  await ann.goto(routes.openness(5))
  await expect(ann.getByText('Never look into the sun,')).toBeVisible()
  const dense = await canopyPhoto(ann, 40)
  const thinned = await canopyPhoto(ann, 18)

  const camera = ann.locator('input[type=file]')
  await camera.setInputFiles({ name: 'a.jpg', mimeType: 'image/jpeg', buffer: Buffer.from('no') })
  await expect(ann.getByText('This file is not a photo that can be read.')).toBeVisible()
  await camera.setInputFiles(dense.file)
  const before = ann.getByRole('region', { name: 'Before pruning' })
  await expect(before.getByRole('img', { name: /taken for sky at A 1·5/ })).toBeVisible()
  expect(Math.abs((await percentIn(before)) - dense.sharePercent)).toBeLessThanOrEqual(2)

  // What was measured is still there when the camera has ended the page, and the app comes from the phone.
  await ann.evaluate(() => navigator.serviceWorker.ready)
  await ann.reload()
  const after = ann.getByRole('region', { name: 'After pruning' })
  await after.locator('input[type=file]').setInputFiles(thinned.file)
  await expect(ann.getByText(/More open by \d+ points/)).toBeVisible()
  expect(Math.abs((await percentIn(after)) - thinned.sharePercent)).toBeLessThanOrEqual(2)
  expect(await orchard.photos()).toEqual([])
})

async function percentIn(shot: Locator): Promise<number> {
  return Number.parseInt((await shot.getByText(/\d+% sky/).textContent()) ?? '', 10)
}

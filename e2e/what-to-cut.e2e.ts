import { loseSignal } from './support/phone'
import { expect, type Page, routes, test } from './support/test'

test('a middle bearer and a tip bearer side by side say different things, by thumb, by key and by button', async ({
  asPerson,
}) => {
  const ann = await asPerson('Ann')
  const bo = await asPerson('Bo')
  await ann.goto(routes.shortenAtTree(25))
  await bo.goto(routes.shortenAtTree(26))

  await expect(ann.getByRole('heading', { level: 1 })).toContainText('the outer third')
  await expect(ann.getByRole('status').filter({ hasText: 'May go.' })).toBeVisible()
  await expect(bo.getByRole('heading', { level: 1 })).toContainText('leave the tips')
  await expect(bo.getByRole('status').filter({ hasText: 'Do not shorten.' })).toContainText(
    'It would cost 57% of the fruit buds.'
  )
  await expect(bo.getByRole('status').filter({ hasText: 'may be cut to a bud.' })).toBeVisible()
  await bo.getByRole('slider', { name: 'Length of the shoot' }).press('Home')
  await expect(bo.getByRole('status').filter({ hasText: 'Up to 23 cm: leave it.' })).toBeVisible()

  const taken = ann.getByRole('slider', { name: 'How much goes' })
  await tapAt(ann, taken, 0.9)
  await expect(ann.getByText('Too much. Not more than 33%.')).toBeVisible()
  const drawnBefore = await ann.getByRole('img').first().getAttribute('aria-label')

  await taken.press('Home')
  await expect(ann.getByText('60 cm stay, 0 cm go.')).toBeVisible()
  for (let step = 0; step < 4; step++) await taken.press('ArrowRight')
  await expect(ann.getByText('40 cm stay, 20 cm go.')).toBeVisible()
  await expect(ann.getByText('13% of its fruit buds go.')).toBeVisible()
  expect(await ann.getByRole('img').first().getAttribute('aria-label')).not.toBe(drawnBefore)

  await ann.getByRole('button', { name: 'More', exact: true }).tap()
  await expect(ann.getByText('Too much. Not more than 33%.')).toBeVisible()
})

test('without signal the tree in hand shows which tool, and what is not ours', async ({
  orchard,
  asPerson,
}) => {
  await orchard.must('Ann', 'claim_tree', { tree: 26 })
  const ann = await asPerson('Ann')
  await ann.goto(routes.tree(26))
  await expect(ann.getByRole('link', { name: 'Which tool, how to cut' })).toBeVisible()
  await loseSignal(ann)

  await ann.getByRole('link', { name: 'Which tool, how to cut' }).tap()
  await expect(ann.getByRole('heading', { level: 1, name: 'Which tool' })).toBeInViewport()
  const thickness = ann.getByRole('slider', { name: 'How thick where you would cut' })
  await thickness.press('Home')
  await expect(ann.getByRole('status').filter({ hasText: 'Hand pruner' })).toBeVisible()
  for (let step = 0; step < 9; step++) await thickness.press('ArrowRight')
  await expect(ann.getByText(/^From below, 1.7 cm deep, 30 cm out/)).toBeVisible()
  await thickness.press('End')

  await expect(ann.getByText('Thicker than 10 cm: not yours.')).toBeVisible()
  await expect(ann.getByRole('link', { name: 'Flag and refer' })).toBeVisible()
  await ann.getByRole('link', { name: 'Back' }).tap()
  await expect(ann.getByRole('heading', { level: 1 })).toContainText('Fernoth')
})

/** With a thumb, so far along it. */
async function tapAt(page: Page, slider: ReturnType<Page['getByRole']>, share: number) {
  const box = await slider.boundingBox()
  if (!box) throw new Error('The slider is not on the screen.')
  await page.touchscreen.tap(box.x + box.width * share, box.y + box.height / 2)
}

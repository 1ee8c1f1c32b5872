import { findSignal, loseSignal } from './support/phone'
import { expect, type Page, routes, test } from './support/test'

const minute = 60_000

test('an hour without signal in a dealt tree comes in as it was', async ({ orchard, asPerson }) => {
  await orchard.must('Lee', 'deal_trees', { trees: [5], to: [orchard.idOf('Ann')] })
  const ann = await asPerson('Ann')
  const lee = await asPerson('Lee', { device: 'tablet' })
  await ann.clock.install()
  await ann.goto(routes.nextTree())
  await expect(ann.getByText('Lee dealt it to you')).toBeVisible()
  await loseSignal(ann)

  await ann.getByRole('button', { name: 'Claim this tree' }).tap()
  await ann.getByRole('button', { name: 'Begin A 1·5' }).tap()
  await expect(ann.getByText('Not confirmed yet')).toBeVisible()
  const unreached = ann.getByText(/A stop does not reach this phone/)
  await expect(unreached).toBeHidden()
  await ann.clock.fastForward(16 * minute)
  await expect(unreached).toBeVisible()
  await ann.clock.fastForward(44 * minute)
  await finish(ann)
  await lee.goto(routes.map(5))
  await expect(lee.getByRole('complementary')).toContainText('Dealt to Ann')

  await findSignal(ann)

  await expect(ann.getByRole('status').filter({ hasText: 'everything sent' })).toBeAttached()
  await expect(lee.getByRole('complementary')).toContainText('Done')
  // Only the phone's clock was moved: the referee counts no minutes that it has not seen pass.
  const [finished] = await orchard.heard('tree_finished')
  expect(Number(finished?.seconds)).toBeLessThan(60)
})

test('a clock two hours off neither stops work nor bends its minutes', async ({
  orchard,
  asPerson,
}) => {
  const ann = await asPerson('Ann')
  await ann.clock.install({ time: Date.now() + 120 * minute })
  await ann.goto(routes.nextTree())
  await ann.getByRole('button', { name: 'Claim this tree' }).tap()
  await ann.getByRole('button', { name: 'Yes, claim it' }).tap()
  await expect(ann.getByText(/yours for 0 min/)).toBeVisible()

  await finish(ann)

  await expect(ann.getByText('A 1·1 is done.')).toBeVisible()
  await expect(ann.getByRole('status').filter({ hasText: 'everything sent' })).toBeAttached()
  const [finished] = await orchard.heard('tree_finished')
  expect(Number(finished?.seconds)).toBeLessThan(60)
})

test('a phone that was switched off opens without signal where it was, with the card and the work', async ({
  orchard,
  asPerson,
}) => {
  await orchard.must('Ann', 'claim_tree', { tree: 3 })
  const ann = await asPerson('Ann')
  await ann.goto(routes.nextTree())
  await untilAppIsKept(ann)
  await loseSignal(ann)

  const again = await ann.context().newPage()
  await ann.close()
  await again.goto(routes.tree(3))
  await again.getByRole('link', { name: 'All steps are done' }).tap()
  await again.getByRole('button', { name: 'Finish tree' }).tap()
  await expect(again.getByText('A 1·3 is done.')).toBeVisible()
  await again.goto(routes.emergency())
  await expect(again.getByRole('link', { name: 'Call 112' })).toBeVisible()
  await findSignal(again)

  await expect.poll(async () => (await orchard.heard('tree_finished')).length).toBe(1)
})

/** Some seconds after the first screen: then the other screens have come, too. */
async function untilAppIsKept(page: Page): Promise<void> {
  await expect
    .poll(() => page.evaluate(async () => (await caches.match('/')) !== undefined), {
      timeout: 20_000,
    })
    .toBe(true)
  await expect
    .poll(() => page.evaluate(async () => (await (await caches.open('rowcall')).keys()).length))
    .toBeGreaterThan(20)
}

async function finish(page: Page): Promise<void> {
  await page.getByRole('link', { name: 'All steps are done' }).tap()
  await page.getByRole('button', { name: 'Finish tree' }).tap()
}

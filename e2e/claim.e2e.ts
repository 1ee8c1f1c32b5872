import { watchHand } from './support/hand'
import { expect, type Page, routes, test } from './support/test'

test('a claim and a finish on a phone are seen at once on the tablet and on the desktop', async ({
  asPerson,
}) => {
  const ann = await asPerson('Ann')
  const lee = await asPerson('Lee', { device: 'tablet' })
  const mo = await asPerson('Mo', { device: 'desktop' })
  await lee.goto(routes.map())
  await mo.goto(routes.board())
  const crew = lee.getByRole('list', { name: 'Crew' })
  const counts = mo.getByRole('region', { name: 'Varnholt' })
  await expect(crew.getByText('Free')).toHaveCount(2)
  await expect(counts).toContainText('0 of 36')

  await ann.goto(routes.nextTree())
  await claim(ann)

  await expect(crew.getByRole('listitem').filter({ hasText: 'Ann' })).toContainText('A 1·1')
  await expect(counts).toContainText('1 in progress')

  await ann.getByRole('link', { name: 'All steps are done' }).tap()
  await ann.getByRole('button', { name: 'Finish tree' }).tap()

  await expect(ann.getByText('A 1·1 is done.')).toBeVisible()
  await expect(crew.getByRole('listitem').filter({ hasText: 'Ann' })).toContainText('Free')
  await expect(counts).toContainText('1 of 36')
})

test('two taps and no typing from the next tree to a claimed one, and from there to a finished one', async ({
  asPerson,
}) => {
  const ann = await asPerson('Ann')
  await ann.goto(routes.nextTree())
  await ann.getByRole('button', { name: 'Claim this tree' }).tap()
  await expect(ann.getByRole('button', { name: 'Yes, claim it' })).toBeVisible()
  // The phone's own back button leads to the step before.
  await ann.goBack()
  await expect(ann.getByRole('button', { name: 'Claim this tree' })).toBeVisible()
  const hand = await watchHand(ann)

  await claim(ann)
  expect(await hand()).toEqual({ taps: 2, keys: 0 })

  await ann.getByRole('link', { name: 'All steps are done' }).tap()
  await ann.getByRole('button', { name: 'Finish tree' }).tap()
  await expect(ann.getByText('A 1·1 is done.')).toBeVisible()
  expect(await hand()).toEqual({ taps: 4, keys: 0 })
})

test('two phones claim one tree: the second is told who was first and takes the next', async ({
  asPerson,
}) => {
  const ann = await asPerson('Ann')
  const bo = await asPerson('Bo')
  for (const phone of [ann, bo]) {
    // The phones hear nothing by themselves, so only the referee can tell the second.
    await phone.routeWebSocket('**/realtime/**', () => {})
    await phone.goto(routes.nextTree())
    await phone.getByRole('button', { name: 'Claim this tree' }).tap()
    await expect(phone.getByRole('button', { name: 'Yes, claim it' })).toBeEnabled()
  }

  await Promise.all(
    [ann, bo].map((phone) => phone.getByRole('button', { name: 'Yes, claim it' }).tap())
  )

  const atTheTree = () => [ann, bo].filter((phone) => phone.url().endsWith(routes.tree(1)))
  await expect.poll(() => atTheTree().length).toBe(1)
  const [second, first] = atTheTree()[0] === ann ? [bo, 'Ann'] : [ann, 'Bo']
  await expect(second.getByText(`${first} was first. Take A 1·2.`)).toBeVisible()
  await second.getByRole('button', { name: 'Take A 1·2' }).tap()
  await second.getByRole('button', { name: 'Yes, claim it' }).tap()
  await expect(second).toHaveURL(routes.tree(2))
})

async function claim(page: Page): Promise<void> {
  await page.getByRole('button', { name: 'Claim this tree' }).tap()
  await page.getByRole('button', { name: 'Yes, claim it' }).tap()
  await expect(page).toHaveURL(routes.tree(1))
}

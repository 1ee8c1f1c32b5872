import { watchHand } from './support/hand'
import { expect, routes, test } from './support/test'

test('two phones claim one tree: the second is told who was first and takes the next', async ({
  asPerson,
}) => {
  const ann = await asPerson('Ann')
  const bo = await asPerson('Bo')
  // Bo's phone hears nothing by itself, so only the referee can tell him.
  await bo.routeWebSocket('**/realtime/**', () => {})
  for (const phone of [ann, bo]) {
    await phone.goto(routes.nextTree())
    await phone.getByRole('button', { name: 'Claim this tree' }).tap()
  }

  await ann.getByRole('button', { name: 'Yes, claim it' }).tap()
  await expect(ann).toHaveURL(routes.tree(1))
  await bo.getByRole('button', { name: 'Yes, claim it' }).tap()

  await expect(bo.getByText('Ann was first. Take A 1·2.')).toBeVisible()
  await bo.getByRole('button', { name: 'Take A 1·2' }).tap()
  await bo.getByRole('button', { name: 'Yes, claim it' }).tap()
  await expect(bo).toHaveURL(routes.tree(2))
})

test('from the next tree to a claimed one are two taps and no typing', async ({ asPerson }) => {
  const ann = await asPerson('Ann')
  await ann.goto(routes.nextTree())
  const hand = await watchHand(ann)

  await ann.getByRole('button', { name: 'Claim this tree' }).tap()
  await ann.getByRole('button', { name: 'Yes, claim it' }).tap()

  await expect(ann).toHaveURL(routes.tree(1))
  expect(await hand()).toEqual({ taps: 2, keys: 0 })
})

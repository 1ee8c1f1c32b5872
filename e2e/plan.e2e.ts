import { expect, routes, test } from './support/test'

test('a lead looks at a plan, leaves somebody out of it, and deals it in one go', async ({
  asPerson,
}) => {
  const lee = await asPerson('Lee', { device: 'tablet' })
  const ann = await asPerson('Ann')
  await lee.goto(routes.shift())

  await lee.getByRole('link', { name: 'Plan who takes which trees' }).tap()
  await expect(lee.getByRole('heading', { name: 'The teams' })).toBeVisible()
  // Whenever this runs, the sun may be about to set.
  for (let press = 0; press < 6; press++) {
    await lee.getByRole('button', { name: 'Half an hour later' }).tap()
  }
  await expect(lee.getByRole('heading', { name: /trees? for 2 teams$/ })).toBeVisible()
  await lee.locator('label.pick').filter({ hasText: 'Bo' }).tap()
  await expect(lee.getByRole('heading', { name: /trees? for one team$/ })).toBeVisible()
  await lee.getByRole('button', { name: /^Deal th/ }).tap()

  await expect(lee.getByText(/dealt to one team\.$/)).toBeVisible()
  await expect(lee.getByRole('link', { name: 'Look at it on the map' })).toBeVisible()
  await ann.goto(routes.nextTree())
  await expect(ann.getByText('Lee dealt it to you')).toBeVisible()
})

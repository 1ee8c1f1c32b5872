import { expect, routes, test } from './support/test'

test('wet wood refuses a tree until a lead excepts it with a reason the manager reads; thunder empties the trees', async ({
  orchard,
  asPerson,
}) => {
  const lee = await asPerson('Lee', { device: 'tablet' })
  const ann = await asPerson('Ann')
  const mo = await asPerson('Mo', { device: 'desktop' })

  // Lee writes down what is now.
  await lee.goto(routes.weather())
  await expect(lee.getByText('Nobody has written down the weather yet.')).toBeVisible()
  await lee.getByRole('radio', { name: 'Wet' }).check({ force: true })
  await lee.getByRole('button', { name: 'Temperature: more' }).tap()
  await lee.getByRole('button', { name: /^Write it down/ }).tap()
  await expect(lee.getByText('Written down.')).toBeVisible()
  const apples = lee.getByRole('listitem').filter({ hasText: /^Apples/ })
  await expect(apples).toContainText('The wood is wet')

  // Ann cannot have an apple, and reads why.
  await ann.goto(routes.nextTree())
  await expect(ann.getByText(/Off now: .*apples.* \(the wood is wet\)/)).toBeVisible()
  await expect(orchard.must('Ann', 'claim_tree', { tree: 1 })).rejects.toThrow(/species_off/)

  // Lee felt the bark; the manager, elsewhere, reads who let it be and why.
  await lee.getByRole('button', { name: 'Make an exception for apples' }).tap()
  await lee.getByRole('radio', { name: 'I felt the bark: it is dry' }).check({ force: true })
  await lee.getByRole('button', { name: /^Make the exception/ }).tap()
  await expect(apples).toContainText('Exception by Lee')
  await mo.goto(routes.board())
  await expect(mo.getByText(/apples \(Lee: I felt the bark: it is dry\)/)).toBeVisible()
  await orchard.must('Ann', 'claim_tree', { tree: 1 })

  // Thunder: over the whole screen of who is in a tree, and nobody takes another.
  await lee.getByRole('checkbox', { name: /^I hear thunder/ }).check({ force: true })
  await lee.getByRole('button', { name: /^Thunder: everybody out/ }).tap()
  const told = ann.getByRole('alertdialog', { name: 'Thunder: come down, get out' })
  await expect(told).toContainText('It stays yours.')
  await expect(lee.getByText('Told to come out, not heard yet: Ann (A 1·1).')).toBeVisible()
  await told.getByRole('button', { name: 'I am down' }).tap()
  await expect(told).toHaveCount(0)
  await expect(lee.getByText(/not heard yet/)).toHaveCount(0)
  await expect(orchard.must('Bo', 'claim_tree', { tree: 6 })).rejects.toThrow(/thunder/)
})

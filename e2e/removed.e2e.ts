import { findSignal, loseSignal } from './support/phone'
import { expect, routes, test } from './support/test'

test('who is removed is out on both devices, and what was not sent is handed in', async ({
  orchard,
  asPerson,
  asNewcomer,
}) => {
  await orchard.must('Ann', 'claim_tree', { tree: 1 })
  const second = await orchard.link('Ann', { kind: 'device' })
  const phone = await asPerson('Ann')
  const tablet = await asNewcomer({ device: 'tablet' })
  const lee = await asPerson('Lee', { device: 'tablet' })
  await tablet.goto(second)
  await tablet.getByRole('button', { name: 'Make this device mine' }).tap()
  await expect(tablet).toHaveURL(routes.tree(1))
  await phone.goto(routes.tree(1))
  await expect(phone.getByRole('link', { name: 'All steps are done' })).toBeVisible()
  await loseSignal(phone)
  await phone.getByRole('link', { name: 'All steps are done' }).tap()
  await phone.getByRole('button', { name: 'Finish tree' }).tap()
  await expect(phone.getByRole('status').filter({ hasText: '1 kept' })).toBeVisible()

  await lee.goto(routes.person(orchard.idOf('Ann')))
  await lee.getByRole('button', { name: 'Remove from the orchard' }).tap()
  await lee.getByRole('dialog').getByRole('button', { name: 'Remove Ann' }).tap()

  const isOut = 'This device is not in Quillerbeck any more'
  await expect(tablet.getByRole('heading', { name: isOut })).toBeVisible()
  await findSignal(phone)
  await expect(phone.getByRole('heading', { name: isOut })).toBeVisible()
  await phone.getByRole('button', { name: 'Hand it in' }).tap()
  await expect(phone.getByText('Handed in. A lead looks at it.')).toBeVisible()
})

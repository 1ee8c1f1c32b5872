import { findSignal, loseSignal } from './support/phone'
import { expect, routes, test } from './support/test'

test('who comes after the briefing stands in a group of their own', async ({
  orchard,
  asPerson,
}) => {
  const lee = await asPerson('Lee', { device: 'tablet' })
  await lee.goto(routes.people())
  await expect(lee.getByRole('heading', { name: 'People', exact: true })).toBeVisible()

  await lee.getByRole('button', { name: 'Cy is here' }).tap()

  const late = lee.getByRole('region', { name: 'Arrived after the briefing' })
  await expect(late.getByText('Cy', { exact: true }).last()).toBeVisible()
  await expect(late.getByText(/Missing: .*briefing/).last()).toBeVisible()
  await orchard.must('Lee', 'give_briefing', { people: [orchard.idOf('Cy')] })
  await expect(late).toHaveCount(0)
})

test('who is put down as under age begins nothing without the adult who answers for them', async ({
  orchard,
  asPerson,
}) => {
  const lee = await asPerson('Lee', { device: 'tablet' })
  await lee.goto(routes.person(orchard.idOf('Ann')))

  await lee.getByRole('button', { name: 'Change what is written about Ann' }).tap()
  const dialog = lee.getByRole('dialog', { name: 'Change Ann' })
  await dialog.getByText('Under age').tap()
  await dialog.getByText('Bo', { exact: true }).tap()
  await dialog.getByRole('button', { name: 'Save changes' }).tap()

  await expect(lee.getByText('under age, with Bo')).toBeVisible()
  await orchard.must('Bo', 'return_tool', { tool: 2 })
  await orchard.must('Bo', 'leave', {})
  await lee.goto(routes.people())
  await expect(lee.getByText(/Missing: .*the adult who answers/)).toBeVisible()
})

test('a lead hands somebody’s tree on, says how they were reached, and both phones know', async ({
  orchard,
  asPerson,
}) => {
  await orchard.must('Ann', 'claim_tree', { tree: 1 })
  const bo = await asPerson('Bo')
  const lee = await asPerson('Lee', { device: 'tablet' })
  await bo.goto(routes.nextTree())
  await lee.goto(routes.person(orchard.idOf('Ann')))

  await lee.getByRole('button', { name: 'Hand on' }).tap()
  const dialog = lee.getByRole('dialog')
  await dialog.getByText('Bo', { exact: true }).tap()
  await expect(dialog.getByText('Say how you reached them.')).toBeVisible()
  await dialog.getByText('By phone or radio').tap()
  await dialog.getByRole('button', { name: 'Hand on' }).tap()

  await expect(lee.getByText('No tree.')).toBeVisible()
  await bo.goto(routes.tree(1))
  await expect(bo.getByRole('link', { name: 'All steps are done' })).toBeVisible()
})

test('a lead counts at noon: whom they see is ticked, who is left is named with their last tree', async ({
  orchard,
  asPerson,
}) => {
  await orchard.must('Ann', 'claim_tree', { tree: 1 })
  const lee = await asPerson('Lee', { device: 'tablet' })
  await lee.goto(routes.headCount())
  await expect(lee.getByText('3 people are on the site')).toBeVisible()

  await lee.getByRole('button', { name: 'Count now' }).tap()
  for (const name of ['Lee', 'Bo'])
    await lee.getByRole('button', { name: `Seen by me: ${name}` }).tap()

  await expect(lee.getByText('1 person is not seen.')).toBeVisible()
  const missing = lee.getByRole('region', { name: 'Not counted yet' })
  await expect(missing.getByText('Ann')).toBeVisible()
  await lee.reload()
  await lee.getByRole('button', { name: 'Seen by me: Ann' }).tap()
  await expect(lee.getByText('Everybody is counted.')).toBeVisible()
  await lee.getByRole('button', { name: 'End the count' }).tap()
  await expect(lee.getByText(/Last count, .*: 3 of 3/)).toBeVisible()
})

test('work of somebody who was put out counts when a lead accepts it', async ({
  orchard,
  asPerson,
}) => {
  await orchard.must('Ann', 'claim_tree', { tree: 1 })
  const ann = await asPerson('Ann')
  const lee = await asPerson('Lee', { device: 'tablet' })
  await ann.goto(routes.tree(1))
  await expect(ann.getByRole('link', { name: 'All steps are done' })).toBeVisible()
  await loseSignal(ann)
  await ann.getByRole('link', { name: 'All steps are done' }).tap()
  await ann.getByRole('button', { name: 'Finish tree' }).tap()
  await orchard.must('Lee', 'remove_person', { subject: orchard.idOf('Ann') })
  await findSignal(ann)
  await ann.getByRole('button', { name: 'Hand it in' }).tap()
  await expect(ann.getByText('Handed in. A lead looks at it.')).toBeVisible()

  await lee.goto(routes.cameIn())
  await expect(lee.getByRole('heading', { name: 'Ann handed this in' })).toBeVisible()
  await lee.getByRole('button', { name: 'Accept the work' }).tap()

  await expect(lee.getByRole('heading', { name: 'Ann handed this in' })).toHaveCount(0)
  await expect(lee.getByText(/after the shift|also worked on it/)).toBeVisible()
})

test('who is not found when the shift closes stays over every lead’s screen', async ({
  orchard,
  asPerson,
}) => {
  await orchard.must('Bo', 'return_tool', { tool: 2 })
  await orchard.must('Bo', 'leave', {})
  await orchard.must('Ann', 'return_tool', { tool: 1 })
  const lee = await asPerson('Lee', { device: 'tablet' })
  const mo = await asPerson('Mo', { device: 'desktop' })
  await mo.goto(routes.board())
  await lee.goto(routes.shift())
  await lee.getByRole('button', { name: 'Close the shift' }).tap()
  const ann = lee.getByRole('listitem').filter({ hasText: 'Ann' })
  await ann.getByText('Not known: the search is on').tap()

  await expect(lee.getByText('Ann: nobody knows where.')).toBeVisible()
  await lee.getByRole('button', { name: 'Close the shift' }).tap()

  const words = 'Ann was not found when the shift closed.'
  await expect(mo.getByText(words)).toBeVisible()
  await expect(lee.getByText(words)).toBeVisible()
  await lee.getByRole('button', { name: 'Ann is found' }).tap()
  await expect(mo.getByText(words)).toHaveCount(0)
})

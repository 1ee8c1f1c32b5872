import { expect, type Page, routes, test } from './support/test'

test('a change before the next tree leaves people at their tree, and is signed before the next', async ({
  orchard,
  asPerson,
}) => {
  await orchard.must('Ann', 'claim_tree', { tree: 1 })
  const lee = await asPerson('Lee', { device: 'tablet' })
  const ann = await asPerson('Ann')
  const bo = await asPerson('Bo')
  await ann.goto(routes.tree(1))
  await bo.goto(routes.nextTree())

  await addOwnTopic(lee, 'Dogs run loose by the gate')
  await lee.getByText('Before the next tree', { exact: true }).tap()
  await lee.getByRole('button', { name: 'Put out version 2' }).tap()

  await expect(ann.getByText('Something changed. Hear what is new and sign again.')).toBeVisible()
  await expect(ann.getByRole('alertdialog')).toHaveCount(0)
  await expect(ann.getByRole('link', { name: 'All steps are done' })).toBeVisible()
  await bo.getByRole('link', { name: 'See' }).tap()
  await expect(bo.getByRole('heading', { name: 'What is new since version 1' })).toBeVisible()
  await expect(bo.getByText('Dogs run loose by the gate')).toBeVisible()
  await bo.getByRole('button', { name: 'Next topic' }).tap()
  await bo.getByText('I read it', { exact: true }).tap()
  await bo.getByRole('button', { name: 'Sign the briefing' }).tap()

  await expect(bo.getByRole('heading', { name: 'You are ready' })).toBeVisible()
})

test('come down now fills the screen at a tree until it is signed; the tree stays theirs', async ({
  orchard,
  asPerson,
}) => {
  await orchard.must('Ann', 'claim_tree', { tree: 1 })
  const lee = await asPerson('Lee', { device: 'tablet' })
  const ann = await asPerson('Ann')
  const bo = await asPerson('Bo')
  await ann.goto(routes.tree(1))
  await bo.goto(routes.nextTree())

  await addOwnTopic(lee, 'A hornets’ nest over row 1')
  await lee.getByText('Come down now', { exact: true }).tap()
  await expect(lee.getByText(/Shout it too/)).toBeVisible()
  await lee.getByRole('button', { name: 'Put out version 2' }).tap()

  const order = ann.getByRole('alertdialog', { name: 'Come down now' })
  await expect(order.getByText('A 1·1 stays yours.')).toBeVisible()
  await expect(order.getByText('A hornets’ nest over row 1').first()).toBeVisible()
  await expect(bo.getByText('Come down now and hear what is new.')).toBeVisible()
  await expect(bo.getByRole('alertdialog')).toHaveCount(0)
  await expect(lee.getByText('not signed yet by Ann (A 1·1)')).toBeVisible()

  await order.getByRole('button', { name: 'I am down and have read it' }).tap()

  await expect(ann.getByRole('alertdialog')).toHaveCount(0)
  await expect(ann.getByRole('link', { name: 'All steps are done' })).toBeVisible()
  await expect(lee.getByText('not signed yet by Ann')).toHaveCount(0)
  await lee.goto(routes.giveBriefing())
  await expect(lee.getByRole('listitem').filter({ hasText: 'Ann' })).toContainText(
    'Signed version 2'
  )
  await lee.getByRole('button', { name: 'Version 1' }).tap()
  await expect(lee.getByRole('region', { name: 'What was told before' })).not.toContainText(
    'hornets'
  )
})

test('what a lead types outlives an incoming stop, a turned tablet and a closed tab', async ({
  orchard,
  asPerson,
}) => {
  const lee = await asPerson('Lee', { device: 'tablet' })
  await addOwnTopic(lee, 'Loose wire in')
  await orchard.must('Bo', 'stop_work', {})
  await lee.getByRole('button', { name: 'I have stopped' }).tap()
  const words = lee.getByRole('textbox', { name: 'In English' })
  await expect(words).toHaveValue('Loose wire in')

  await lee.setViewportSize({ width: 1180, height: 820 })
  await expect(words).toHaveValue('Loose wire in')

  // At once, before it would be kept by itself.
  await words.fill('Loose wire in row 3')
  await lee.reload()
  await lee.getByRole('button', { name: 'Change the briefing' }).tap()
  await expect(words).toHaveValue('Loose wire in row 3')
})

/** Opens the editor of the open shift and begins a topic of the lead's own. */
async function addOwnTopic(lee: Page, words: string): Promise<void> {
  await lee.goto(routes.shift())
  await lee.getByRole('button', { name: 'Change the briefing' }).tap()
  await lee.getByRole('button', { name: 'Add a topic' }).tap()
  await lee.getByRole('button', { name: 'A topic of your own' }).tap()
  await lee.getByRole('textbox', { name: 'In English' }).fill(words)
}

import { makeReady } from './support/day'
import { expect, routes, test } from './support/test'

test.describe('on the morning of a planned shift', () => {
  test.use({ day: 'planned' })

  test('a lead opens it, counts in who has no phone, gives the briefing, and signs for them', async ({
    asPerson,
  }) => {
    const lee = await asPerson('Lee', { device: 'tablet' })
    await lee.goto(routes.shift())
    await lee.getByRole('button', { name: 'Open the shift' }).tap()
    await expect(lee.getByRole('heading', { name: 'The shift is open' })).toBeVisible()

    await lee.getByRole('link', { name: 'People' }).tap()
    await lee.getByRole('button', { name: 'Di is here' }).tap()
    await lee.getByRole('link', { name: 'Shift' }).tap()
    await lee.getByRole('link', { name: 'Give the briefing' }).tap()
    await lee.getByRole('checkbox', { name: 'Di', exact: true }).check({ force: true })
    await lee.getByRole('button', { name: 'I briefed this person' }).tap()
    await lee.getByRole('button', { name: 'Sign for Di' }).tap()
    const dialog = lee.getByRole('dialog', { name: 'Sign for Di' })
    await dialog.getByText('It was read to them').tap()
    await dialog.getByRole('button', { name: 'Sign for Di' }).tap()

    await expect(lee.getByRole('listitem').filter({ hasText: 'Di' })).toContainText(
      'Signed version 1'
    )
  })
})

test('a lead deals a row, and the one it is dealt to sees it at once', async ({ asPerson }) => {
  const lee = await asPerson('Lee', { device: 'tablet' })
  const ann = await asPerson('Ann')
  await ann.goto(routes.nextTree())
  await expect(ann.getByText('The nearest tree you may take')).toBeVisible()
  await lee.goto(routes.map())
  await lee.getByRole('group').getByText('Table', { exact: true }).tap()
  await lee.getByRole('row', { name: /A 2·1 / }).tap()
  await lee.getByRole('button', { name: 'Pick all of row 2 that is left to do' }).tap()
  await lee.getByRole('checkbox', { name: 'Ann', exact: true }).check({ force: true })

  await lee.getByRole('button', { name: 'Deal 12 to Ann' }).tap()

  await expect(lee.getByText('12 trees are dealt to Ann.')).toBeVisible()
  await expect(ann.getByText('Lee dealt it to you')).toBeVisible()
  await expect(ann.getByRole('img', { name: 'Varnholt, row 2, tree 1', exact: true })).toBeVisible()
})

test('a shift closes with a reason for everything that is still open', async ({
  orchard,
  asPerson,
}) => {
  await orchard.must('Ann', 'claim_tree', { tree: 1 })
  const lee = await asPerson('Lee', { device: 'tablet' })
  const ann = await asPerson('Ann')
  await ann.goto(routes.tree(1))
  await lee.goto(routes.shift())
  await lee.getByRole('button', { name: 'Close the shift' }).tap()
  const close = lee.getByRole('button', { name: 'Close the shift' })
  await expect(close).toHaveAttribute('aria-disabled', 'true')

  await lee.getByRole('button', { name: /The same for all 2: Stays on the site/ }).tap()
  await lee.getByRole('button', { name: /The same for all 2: Left in the block/ }).tap()
  await expect(close).toHaveAccessibleDescription('Say why for 1 more.')
  const trees = lee.getByRole('region', { name: '1 tree is still held' })
  await trees.getByRole('radio', { name: 'Not begun' }).check({ force: true })
  await close.tap()

  await expect(lee.getByRole('heading', { name: 'Shift', level: 1 })).toBeVisible()
  await expect(ann.getByText('Nobody holds this tree')).toBeVisible()
})

test('a tree that was finished and not tapped is done when the shift closes', async ({
  orchard,
  asPerson,
}) => {
  await orchard.must('Ann', 'claim_tree', { tree: 1 })
  const lee = await asPerson('Lee', { device: 'tablet' })
  await lee.goto(routes.shift())
  await lee.getByRole('button', { name: 'Close the shift' }).tap()
  await lee.getByRole('button', { name: /The same for all 2: Stays on the site/ }).tap()
  await lee.getByRole('button', { name: /The same for all 2: Left in the block/ }).tap()
  const trees = lee.getByRole('region', { name: '1 tree is still held' })
  await trees.getByRole('radio', { name: 'Finished, not tapped' }).check({ force: true })

  await lee.getByRole('button', { name: 'Close the shift' }).tap()

  await expect(lee.getByRole('heading', { name: 'Shift', level: 1 })).toBeVisible()
  await lee.goto(routes.map(1))
  await expect(lee.getByRole('complementary')).toContainText('Done')
})

test('a lead takes a tree for somebody without a phone and finishes it', async ({
  orchard,
  asPerson,
}) => {
  await makeReady(orchard, 'Di', 'P3')
  await orchard.must('Lee', 'deal_trees', { trees: [9], to: [orchard.idOf('Di')] })
  const lee = await asPerson('Lee', { device: 'tablet' })
  await lee.goto(routes.person(orchard.idOf('Di')))

  await lee.getByRole('button', { name: 'Begin A 1·9' }).tap()
  await lee.getByRole('button', { name: 'A 1·9 is done' }).tap()

  await expect(lee.getByText(/^No tree\./)).toBeVisible()
  await lee.goto(routes.map(9))
  await expect(lee.getByRole('complementary')).toContainText('Done')
})

import { takeSetUpCode } from './support/set-up-codes'
import { expect, type Page, routes, test } from './support/test'
import { corner as firstTree } from './support/things'

/** Four corners of ninety metres by fifty, rows along the long side; as they are read off a map. */
const corners = ['41.2042, -2.8177', '41.20465, -2.8177', '41.20465, -2.81663', '41.2042, -2.81663']

test('from a set-up link and four typed corners to printed labels, in under two minutes', async ({
  asNewcomer,
}) => {
  const started = Date.now()
  const mo = await asNewcomer({ device: 'desktop' })
  await mo.goto(routes.setUp(takeSetUpCode()))
  await mo.getByRole('textbox', { name: 'Name of the orchard' }).fill('Quillerbeck')
  await mo.getByRole('textbox', { name: 'Your name' }).fill('Mo')
  await mo.getByRole('button', { name: 'Make the orchard' }).click()
  await expect(mo).toHaveURL(routes.board())

  await mo.getByRole('link', { name: 'Rooms' }).click()
  await mo.getByRole('link', { name: /^Blocks and trees/ }).click()
  await mo.getByRole('link', { name: 'Lay out a block' }).click()
  await mo.getByRole('textbox', { name: 'Name of the block' }).fill('Pond Side')
  await mo.getByRole('textbox', { name: 'Letters on its plates' }).fill('P')
  // The last two the wrong way round, as it happens.
  await typeCorners(mo, [0, 1, 3, 2])
  await expect(mo.getByText(/The outline crosses itself/)).toBeVisible()
  await mo.getByRole('button', { name: 'Put the corners in order' }).click()
  await mo.getByLabel('Between rows (m)').fill('6')
  await mo.getByRole('button', { name: /^Make \d+ rows, \d+ trees$/ }).click()

  await expect(mo.getByText(/^Pond Side is laid out: \d+ trees\.$/)).toBeVisible()
  await mo.getByRole('link', { name: 'Print labels' }).click()
  await expect(mo.getByRole('article', { name: 'P 1·1', exact: true })).toBeVisible()
  expect(Date.now() - started).toBeLessThan(120_000)
})

test('a manager with a tablet sets many trees at once, and is told whose tree is in the way', async ({
  orchard,
  asPerson,
}) => {
  await orchard.must('Bo', 'claim_tree', { tree: 2 })
  const mo = await asPerson('Mo', { device: 'tablet' })
  await mo.goto(routes.block(1))
  await mo.getByRole('button', { name: 'Pick rows and places' }).tap()
  await mo.getByRole('textbox', { name: 'From row' }).fill('1')
  await mo.getByRole('textbox', { name: 'To row' }).fill('1')
  await mo.getByRole('button', { name: 'Pick these' }).tap()
  await mo.getByRole('combobox', { name: 'What is there' }).selectOption({ label: 'a dead tree' })
  const set = mo.getByRole('button', { name: /^Set it for \d+ trees$/ })
  await set.tap()
  await expect(mo.getByText(/^Somebody is at A 1·2\./)).toBeVisible()

  await mo.getByRole('combobox', { name: 'What is there' }).selectOption({ label: 'As it is' })
  await mo.getByRole('combobox', { name: 'Size' }).selectOption({ label: 'small' })
  await mo.getByRole('textbox', { name: 'Year planted' }).fill('1998')
  await set.tap()

  await expect(mo.getByText(/^\d+ trees are changed\.$/)).toBeVisible()
})

test('a manager walks round a block with a phone, and puts a tree where they stand', async ({
  orchard,
  asPerson,
}) => {
  const mo = await asPerson('Mo')
  await mo.context().grantPermissions(['geolocation'])
  await mo.goto(routes.newBlock())
  await mo.getByRole('textbox', { name: 'Name of the block' }).fill('Pond Side')
  await mo.getByRole('textbox', { name: 'Letters on its plates' }).fill('P')
  for (const [at, corner] of corners.entries()) {
    await standAt(mo, corner)
    await mo.getByRole('button', { name: 'I am at the next corner' }).tap()
    const letter = String.fromCharCode(65 + at)
    const [lat, lon] = corner.split(', ').map((degrees) => Number(degrees).toFixed(7))
    await expect(mo.getByRole('textbox', { name: `Corner ${letter}`, exact: true })).toHaveValue(
      `${lat}, ${lon}`
    )
  }
  await mo.getByRole('button', { name: /^Make \d+ rows, \d+ trees$/ }).tap()
  await expect(mo.getByText(/^Pond Side is laid out: \d+ trees\.$/)).toBeVisible()

  await mo.goto(routes.block(1))
  await mo.getByRole('button', { name: 'Add a tree' }).tap()
  await mo.getByRole('textbox', { name: 'Row', exact: true }).fill('1')
  await mo.getByRole('textbox', { name: 'Place', exact: true }).fill('13')
  await standAt(mo, `48.00052, ${(firstTree.lon + 0.00002).toFixed(5)}`)
  await mo.locator('label').filter({ hasText: 'Where I stand' }).tap()
  await expect(mo.getByText('Taken, to within 3 m.')).toBeVisible()
  await mo.getByRole('button', { name: 'Add this tree' }).tap()

  await expect(mo.getByText('The tree is there.')).toBeVisible()
  expect(await orchard.heard('tree_added')).toHaveLength(1)
})

/** As a phone says it when it is sure to three metres. */
async function standAt(page: Page, corner: string): Promise<void> {
  const [latitude = 0, longitude = 0] = corner.split(', ').map(Number)
  await page.context().setGeolocation({ latitude, longitude, accuracy: 3 })
}

async function typeCorners(page: Page, order: readonly number[]): Promise<void> {
  for (const [line, corner] of order.entries()) {
    const letter = String.fromCharCode(65 + line)
    await page
      .getByRole('textbox', { name: `Corner ${letter}`, exact: true })
      .fill(corners[corner] ?? '')
  }
}

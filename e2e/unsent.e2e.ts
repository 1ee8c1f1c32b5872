import { findSignal, kill, loseSignal } from './support/phone'
import { photoFile } from './support/photo'
import { expect, type Page, routes, test } from './support/test'

test('a killed phone with five things unsent and a flag half written loses nothing', async ({
  orchard,
  asPerson,
}) => {
  await orchard.must('Ann', 'claim_tree', { tree: 1 })
  const ann = await asPerson('Ann')
  await ann.goto(routes.tree(1))
  await expect(ann.getByRole('link', { name: 'All steps are done' })).toBeVisible()
  const photo = await photoFile(ann, 1200, 900)
  await loseSignal(ann)

  // finished, flagged, photographed, on a break and back: five
  await ann.getByRole('link', { name: 'All steps are done' }).tap()
  await ann.getByRole('button', { name: 'Finish tree' }).tap()
  await expect(ann.getByText('A 1·1 is done.')).toBeVisible()
  await ann.getByRole('link', { name: 'Flag', exact: true }).tap()
  await beginFlag(ann, { note: 'Two fingers wide, at the fork', photo })
  await ann.getByRole('button', { name: 'Flag for disease' }).tap()
  await expect(ann.getByRole('heading', { name: 'A 1·2 is flagged for disease.' })).toBeVisible()
  await ann.getByRole('link', { name: 'Quillerbeck' }).tap()
  await ann.getByRole('link', { name: 'Break or go home' }).tap()
  await ann.getByRole('button', { name: 'Take a break' }).tap()
  await ann.getByRole('button', { name: 'Back to work' }).tap()
  await expect(ann.getByRole('status').filter({ hasText: '5 kept' })).toBeVisible()
  // and one more flag, only begun
  await ann.getByRole('link', { name: 'Flag', exact: true }).tap()
  await ann.getByRole('textbox', { name: 'Row' }).fill('1')
  await ann.getByRole('textbox', { name: 'Tree' }).fill('6')
  await ann.getByRole('button', { name: 'This is the one' }).tap()
  await beginFlag(ann, { note: 'Gum below the second limb', photo })
  await kill(ann)

  const again = await ann.context().newPage()
  await again.goto(routes.flagTree(6))

  await expect(again.getByRole('textbox', { name: 'A few words' })).toHaveValue(
    'Gum below the second limb'
  )
  await expect(again.getByRole('img', { name: 'Photo kept' })).toBeVisible()
  await findSignal(again)
  await again.getByRole('link', { name: 'Close' }).tap()
  await expect(again.getByRole('status').filter({ hasText: 'everything sent' })).toBeAttached()
  const lee = await asPerson('Lee', { device: 'tablet' })
  await lee.goto(routes.map(2))
  await expect(lee.getByRole('complementary')).toContainText('Two fingers wide, at the fork')
  await lee.goto(routes.map(1))
  await expect(lee.getByRole('complementary')).toContainText('Done')
})

type Begun = { note: string; photo: Awaited<ReturnType<typeof photoFile>> }

async function beginFlag(page: Page, { note, photo }: Begun): Promise<void> {
  await page.getByRole('radio', { name: 'Looks ill' }).check({ force: true })
  await page.getByRole('radio', { name: 'Gum' }).check({ force: true })
  await page.getByRole('textbox', { name: 'A few words' }).fill(note)
  const chooser = page.waitForEvent('filechooser')
  await page.getByRole('button', { name: 'Add a photo' }).tap()
  await (await chooser).setFiles(photo)
  await expect(page.getByRole('img', { name: 'Photo kept' })).toBeVisible()
}

import { loseSignal } from './support/phone'
import { photoFile, secretPlace } from './support/photo'
import { expect, type Page, routes, test } from './support/test'

test('a wrong, a used and an ended link each say what to do', async ({ orchard, asNewcomer }) => {
  const used = await orchard.link('Ann', { kind: 'device' })
  const first = await asNewcomer()
  await first.goto(used)
  await first.getByRole('button', { name: 'Make this device mine' }).tap()
  await expect(first).toHaveURL(routes.nextTree())
  const ended = await orchard.link('Lee', { kind: 'join' }, { ended: true })

  for (const [link, why] of [
    [routes.join('nobody-made-this'), /Nobody made this link/],
    [used, /It was used already/],
    [ended, /It has expired/],
  ] as const) {
    const phone = await asNewcomer()
    await phone.goto(link)
    await expect(phone.getByRole('heading', { name: 'This link lets nobody in' })).toBeVisible()
    await expect(phone.getByText(why)).toBeVisible()
    await expect(phone.getByText(/ask your lead for a new link/)).toBeVisible()
  }
})

test('a code typed wrong can be mended, and a name is asked for before anything is lost', async ({
  orchard,
  asNewcomer,
}) => {
  const link = await orchard.link('Lee', { kind: 'join' })
  const phone = await asNewcomer()
  await phone.goto(routes.join())
  await phone.getByRole('textbox', { name: 'Code from the lead' }).fill('  ')
  await phone.getByRole('button', { name: 'Use this code' }).tap()
  await expect(phone.getByText('Write the code as it stands on the card.')).toBeVisible()
  await phone.getByRole('textbox', { name: 'Code from the lead' }).fill(link)
  await phone.getByRole('button', { name: 'Use this code' }).tap()

  await phone.getByRole('button', { name: 'Join the crew' }).tap()
  await expect(phone.getByText('Write a name the crew knows.')).toBeVisible()
  await phone.getByRole('textbox', { name: 'Your name' }).fill('Eve')
  await phone.getByRole('button', { name: 'Join the crew' }).tap()
  await expect(phone.getByText('Say if you are an adult, then join.')).toBeVisible()
  await expect(phone.getByRole('textbox', { name: 'Your name' })).toHaveValue('Eve')
  await phone.getByText('Adult', { exact: true }).tap()
  await phone.getByRole('button', { name: 'Join the crew' }).tap()
  await expect(phone).toHaveURL(routes.ready())
})

test('a huge photo is made small and tells no place; what is no photo is refused; the note stays', async ({
  orchard,
  asPerson,
}) => {
  const ann = await asPerson('Ann')
  await ann.goto(routes.flagTree(7))
  await ann.getByRole('radio', { name: 'Looks ill' }).check({ force: true })
  await ann.getByRole('radio', { name: 'Sunken bark, canker' }).check({ force: true })
  const note = ann.getByRole('textbox', { name: 'A few words' })
  await note.fill('As long as a hand')

  await choosePhoto(ann, { name: 'list.txt', mimeType: 'text/plain', buffer: Buffer.from('no') })
  await expect(ann.getByText('This file is not a photo that can be read')).toBeVisible()
  const huge = await photoFile(ann, 4000, 3000)
  expect(huge.buffer.includes(secretPlace)).toBe(true)
  await choosePhoto(ann, huge)
  await note.fill('As long as a hand, and wet')
  await expect(ann.getByRole('img', { name: 'Photo kept' })).toBeVisible()
  await expect(note).toHaveValue('As long as a hand, and wet')
  await ann.getByRole('button', { name: 'Flag for disease' }).tap()
  await expect(ann.getByRole('status').filter({ hasText: 'everything sent' })).toBeAttached()

  const [photo] = await orchard.photos()
  expect(photo?.length).toBeLessThanOrEqual(200_000)
  expect(photo?.includes(secretPlace)).toBe(false)
})

test('a tree that is not there says so and shows the way on', async ({ asPerson }) => {
  const ann = await asPerson('Ann')

  for (const path of [routes.tree(4711), '/tree/first', routes.flagTree(4711)]) {
    await ann.goto(path)
    await expect(ann.getByRole('heading', { name: /no tree with this number/ })).toBeVisible()
  }
  await ann.goto('/tree/1/nonsense')
  await expect(ann.getByRole('heading', { name: 'There is nothing at this address' })).toBeVisible()
})

test('a claim without signal is not asked, and the phone says why', async ({ asPerson }) => {
  const ann = await asPerson('Ann')
  await ann.goto(routes.nextTree())
  await expect(ann.getByRole('button', { name: 'Claim this tree' })).toBeVisible()
  await loseSignal(ann)

  await ann.getByRole('button', { name: 'Claim this tree' }).tap()

  await expect(ann.getByText(/A claim needs signal/)).toBeVisible()
  const yes = ann.getByRole('button', { name: 'Yes, claim it' })
  await expect(yes).toHaveAttribute('aria-disabled', 'true')
  await expect(yes).toHaveAccessibleDescription(/A claim needs signal/)
})

type File = { name: string; mimeType: string; buffer: Buffer }

async function choosePhoto(page: Page, file: File): Promise<void> {
  const chooser = page.waitForEvent('filechooser')
  await page.getByRole('button', { name: 'Add a photo' }).tap()
  await (await chooser).setFiles(file)
}

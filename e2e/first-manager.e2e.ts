import { spawnSync } from 'node:child_process'
import { fileURLToPath } from 'node:url'

import { hostAddress } from './support/host'
import { takeSetUpCode } from './support/set-up-codes'
import { expect, type Page, routes, test } from './support/test'

const clone = fileURLToPath(new URL('..', import.meta.url))

test('from a set-up link to an orchard with trees, a round, an open shift and a link to join', async ({
  asNewcomer,
}) => {
  const mo = await asNewcomer({ device: 'desktop' })
  await mo.goto(routes.setUp(takeSetUpCode()))
  await mo.getByRole('textbox', { name: 'Name of the orchard' }).fill('Quillerbeck')
  await mo.getByRole('textbox', { name: 'Your name' }).fill('Mo')
  await mo.getByRole('button', { name: 'Make the orchard' }).click()
  await expect(mo).toHaveURL(routes.board())

  bringIn(await deviceLink(mo), 'supabase/seed/orchard.csv')
  await mo.goto(routes.shift())
  await mo.getByRole('button', { name: 'Open the round' }).click()
  await mo.getByRole('button', { name: 'Plan the shift' }).click()
  await mo.getByRole('button', { name: 'Put out version 1' }).click()
  await mo.getByRole('button', { name: 'Open the shift' }).click()
  await expect(mo.getByRole('heading', { name: 'The shift is open' })).toBeVisible()
  await mo.getByRole('button', { name: 'Make the link' }).click()
  const link = await linkIn(mo)

  const eve = await asNewcomer()
  await eve.goto(link)
  await expect(eve.getByRole('heading', { name: 'Quillerbeck' })).toBeVisible()
  await eve.getByRole('textbox', { name: 'Your name' }).fill('Eve')
  await eve.getByText('Adult', { exact: true }).tap()
  await eve.getByRole('button', { name: 'Join the crew' }).tap()
  await expect(eve).toHaveURL(routes.ready())
})

async function deviceLink(page: Page): Promise<string> {
  await page.goto(routes.device())
  await page.getByRole('button', { name: 'Make a code' }).click()
  return linkIn(page)
}

/** As it stands on the screen. */
async function linkIn(page: Page): Promise<string> {
  const link = await page.getByText(`${hostAddress()}/join#`).textContent()
  return link ?? ''
}

/** As a manager does at a terminal. */
function bringIn(link: string, file: string): void {
  const words = ['tsx', 'supabase/seed/bring-in.ts', file, '--link', link]
  const { status, stdout, stderr } = spawnSync('npx', words, { cwd: clone, encoding: 'utf8' })
  expect(status, `${stdout}${stderr}`).toBe(0)
}

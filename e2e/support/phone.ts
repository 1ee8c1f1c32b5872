/** What happens to a phone: its tab is killed, its signal goes. */

import { expect, type Page } from '@playwright/test'

/** As a phone does with a page in the background: nothing of it runs any more, not even its last words. */
export async function kill(page: Page): Promise<void> {
  const devtools = await page.context().newCDPSession(page)
  const crashed = page.waitForEvent('crash')
  // It never answers, since the page that should is gone.
  devtools.send('Page.crash').catch(() => {})
  await crashed
  await page.close()
}

/** Only once all screens are on the phone, as they are a few seconds after it was opened. */
export async function loseSignal(page: Page): Promise<void> {
  while (await asksWithin(page, quietMs));
  await page.context().setOffline(true)
  await expect(page.getByRole('status').filter({ hasText: /^(No signal|\d+ kept)$/ })).toBeVisible()
}

/** The other screens are fetched a moment after the first one has come. */
const quietMs = 2_000

async function asksWithin(page: Page, ms: number): Promise<boolean> {
  const asked = page.waitForEvent('request', { timeout: ms })
  return asked.then(
    () => true,
    () => false
  )
}

export async function findSignal(page: Page): Promise<void> {
  await page.context().setOffline(false)
}

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

/** A page that has been open for a moment has fetched all screens; then the signal goes. */
export async function loseSignal(page: Page): Promise<void> {
  await page.waitForLoadState('networkidle')
  await page.context().setOffline(true)
  await expect(page.getByRole('status').filter({ hasText: /^(No signal|\d+ kept)$/ })).toBeVisible()
}

export async function findSignal(page: Page): Promise<void> {
  await page.context().setOffline(false)
}

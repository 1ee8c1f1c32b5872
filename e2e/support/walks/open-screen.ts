/** Brings a page to a screen of a walk, and presses what is pressed there. */

import { expect, type Page } from '@playwright/test'

import { routes } from '@/lib/routes'
import { leadMessages, messages } from '@/lib/text/messages'

import type { Screen } from './walk'

export async function openScreen(page: Page, screen: Screen, language: 'en' | 'es'): Promise<void> {
  const { path, press } = typeof screen === 'string' ? { path: screen, press: null } : screen
  if (isInPage(page.url()) && isInPage(path)) await goInPage(page, path)
  else await load(page, path)
  if (press === null) return
  const words = { ...(await messages(language)), ...(await leadMessages(language)) }
  const name = press(words)
  const button = page.getByRole('button', { name, exact: true })
  // A painted choice is pressed by its words, and so is what opens in place.
  await button
    .or(page.locator('label, summary').filter({ hasText: name }))
    .first()
    .click()
}

const pagesOfServer = [routes.home(), routes.join(), routes.setUp()]

function isInPage(url: string): boolean {
  return !url.startsWith('about:') && !pagesOfServer.includes(new URL(url, 'http://x').pathname)
}

async function load(page: Page, path: string): Promise<void> {
  // A fragment alone would not load the page anew.
  await page.goto('about:blank')
  await page.goto(path)
  await expect(page.getByRole('heading', { level: 1 }).first()).toBeVisible()
}

/** As people get there, and in a fifth of the time. By way of another screen, so that nothing stays open or chosen. */
async function goInPage(page: Page, path: string): Promise<void> {
  for (const to of [routes.unsent(), path]) {
    await page.evaluate((address) => {
      for (const heading of document.querySelectorAll<HTMLElement>('main h1'))
        heading.dataset.left = ''
      history.pushState(null, '', address)
    }, to)
    const arrived = page.locator('main h1:not([data-left])').first()
    // What lies over every screen has no screen under it.
    const isThere = await arrived.waitFor({ state: 'attached', timeout: 3_000 }).then(
      () => true,
      () => false
    )
    if (!isThere) return load(page, path)
  }
  await expect(page.getByRole('heading', { level: 1 }).first()).toBeVisible()
}

/**
 * Playwright's test, with an orchard of its own for each journey and people who open it:
 *
 *   test('…', async ({ orchard, asPerson }) => {
 *     const ann = await asPerson('Ann')
 *     const lee = await asPerson('Lee', { device: 'tablet' })
 *     await ann.goto(routes.nextTree())
 *   })
 */

import { type BrowserContext, test as base, expect, type Page } from '@playwright/test'

import { bringDayTo, type Day } from './day'
import { type DeviceName, devices } from './devices'
import { hostAddress, hostLog } from './host'
import type { Login } from './login'
import { Orchard, type PersonName } from './orchard'

export { routes } from '@/lib/routes'
export { expect, type Page }

export type Held = { device?: DeviceName; language?: 'en' | 'es'; theme?: 'light' | 'dark' }

type Fixtures = {
  /** How far the day has come. */
  day: Day
  orchard: Orchard
  /** A fresh browser with that person's sign-in. */
  asPerson: (name: PersonName, held?: Held) => Promise<Page>
  /** A fresh browser on which nobody is signed in. */
  asNewcomer: (held?: Held) => Promise<Page>
  open: (held: Held | undefined, kept: Login['localStorage']) => Promise<Page>
}

export const test = base.extend<Fixtures>({
  day: ['at work', { option: true }],

  orchard: async ({ day }, use) => {
    const orchard = await Orchard.found()
    await bringDayTo(day, orchard)
    await use(orchard)
  },

  asPerson: async ({ orchard, open }, use) => {
    await use((name, held) => open(held, orchard.loginOf(name).localStorage))
  },

  asNewcomer: async ({ open }, use) => {
    await use((held) => open(held, []))
  },

  open: async ({ browser }, use, testInfo) => {
    const contexts: BrowserContext[] = []
    const complaints: string[] = []
    const logged = hostLog().length

    await use(async ({ device = 'phone', language = 'en', theme = 'light' } = {}, kept) => {
      const context = await browser.newContext({
        ...devices[device],
        baseURL: hostAddress(),
        locale: language,
        colorScheme: theme,
        reducedMotion: 'reduce',
        storageState: { cookies: [], origins: [{ origin: hostAddress(), localStorage: kept }] },
      })
      contexts.push(context)
      context.on('weberror', (error) => complaints.push(String(error.error())))
      context.on('console', (message) => {
        if (message.type() === 'error' && !isOfTheNetwork(message.text()))
          complaints.push(message.text())
      })
      return context.newPage()
    })

    if (testInfo.status !== testInfo.expectedStatus)
      await testInfo.attach('host.log', { body: hostLog().slice(logged) })
    for (const context of contexts) await context.close()
    expect(complaints, 'complaints in the consoles of the pages').toEqual([])
  },
})

/**
 * Calls that fail without signal or are refused are part of the day; the screens speak of them. Blobs are
 * fetched by Playwright itself, for its trace.
 */
function isOfTheNetwork(text: string): boolean {
  return /Failed to load resource|WebSocket connection to|net::ERR_|Failed to fetch|Connecting to 'blob:/.test(
    text
  )
}

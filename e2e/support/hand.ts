/** What a hand does on a page from now on: taps, and keys pressed. The app changes screens without loading. */

import type { Page } from '@playwright/test'

export type Hand = { taps: number; keys: number }

export async function watchHand(page: Page): Promise<() => Promise<Hand>> {
  const hand = await page.evaluateHandle(() => {
    const done = { taps: 0, keys: 0 }
    addEventListener('pointerdown', () => done.taps++, true)
    addEventListener('keydown', () => done.keys++, true)
    return done
  })
  return () => hand.jsonValue()
}

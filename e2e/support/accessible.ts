/** What holds on every screen, whoever looks at it and on whatever device. */

import AxeBuilder from '@axe-core/playwright'
import { expect, type Page } from '@playwright/test'

const rules = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice']

/** axe finds nothing. The screen itself has no frames, and legacy mode opens no second page. */
export async function expectAxeClean(page: Page): Promise<void> {
  const { violations } = await new AxeBuilder({ page })
    .setLegacyMode(true)
    .withTags(rules)
    .analyze()
  const found = violations.flatMap(({ id, nodes }) =>
    nodes.map(({ html, failureSummary }) => `${id}: ${html}\n${failureSummary}`)
  )
  expect.soft(found, `axe on ${page.url()}`).toEqual([])
}

/** Nothing has to be read sideways on the narrowest phone; a map is moved, not read. */
export async function expectNoSidewaysScroll(page: Page): Promise<void> {
  const before = page.viewportSize()
  await page.setViewportSize({ width: 320, height: 640 })
  const wide = await page.evaluate(() =>
    [...document.querySelectorAll('*')]
      .filter((element) => {
        const isPage = element === document.documentElement
        const scrolls = ['auto', 'scroll'].includes(getComputedStyle(element).overflowX)
        return (isPage || scrolls) && element.scrollWidth > element.clientWidth + 1
      })
      .map((element) => `${element.tagName} ${element.className}: ${element.scrollWidth} px`)
  )
  expect.soft(wide, `wider than 320 px on ${page.url()}`).toEqual([])
  if (before) await page.setViewportSize(before)
}

/** What is pressed is at least so high; a choice is pressed by its label. */
export async function expectTargetsOf(page: Page, leastPx: number): Promise<void> {
  const small = await page.evaluate((least) => {
    const pressed = 'a[href], button, input, select, textarea, [role="button"], [role="radio"]'
    return [...document.querySelectorAll<HTMLElement>(pressed)]
      .map((element) => {
        const isChoice = element.matches(
          'input[type="radio"], input[type="checkbox"], input[type="file"]'
        )
        const target = (isChoice && element.closest('label')) || element
        return { target, box: target.getBoundingClientRect() }
      })
      .filter(({ target, box }) => box.height > 0 && target.checkVisibility())
      .filter(({ box }) => box.height < least - 0.5)
      .map(({ target, box }) => `${Math.round(box.height)} px: ${target.outerHTML.slice(0, 120)}`)
  }, leastPx)
  expect.soft(small, `lower than ${leastPx} px on ${page.url()}`).toEqual([])
}

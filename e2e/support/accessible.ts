/** What holds on every screen, whoever looks at it and on whatever device. */

import { expect, type Page } from '@playwright/test'
import axe, { type RunOptions } from 'axe-core'

type Rules = NonNullable<RunOptions['runOnly']>

const tags = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice']

/** axe finds nothing in light, and no pale words in dark, where only colours differ. */
export async function expectAxeClean(page: Page): Promise<void> {
  await page.evaluate(scrollToEnd)
  await page.emulateMedia({ colorScheme: 'light' })
  await expectNothingFound(page, tags, 'light')
  await page.emulateMedia({ colorScheme: 'dark' })
  await expectNothingFound(page, { type: 'rule', values: ['color-contrast'] }, 'dark')
}

async function expectNothingFound(page: Page, runOnly: Rules, theme: string): Promise<void> {
  await bringAxe(page)
  const found = await page.evaluate(askAxe, runOnly)
  expect.soft(found, `axe in ${theme} on ${page.url()}`).toEqual([])
}

/** Half a megabyte to read: once a page, which lasts for many screens. */
async function bringAxe(page: Page): Promise<void> {
  if (!(await page.evaluate(() => 'axe' in globalThis))) await page.evaluate(axe.source)
}

/** Runs in the page. */
async function askAxe(runOnly: Rules): Promise<string[]> {
  const { axe } = globalThis as unknown as { axe: typeof import('axe-core') }
  const { violations } = await axe.run(document, { runOnly, resultTypes: ['violations'] })
  return violations.flatMap(({ id, nodes }) =>
    nodes.map(({ html, failureSummary }) => `${id}: ${html}\n${failureSummary}`)
  )
}

/** Where what sticks to the edge lies in its own place, and covers nothing that could be scrolled away from it. */
function scrollToEnd(): void {
  for (const element of document.querySelectorAll('*')) element.scrollTop = element.scrollHeight
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

/** What is pressed is at least so high, where it takes the press; a choice is pressed by its label. */
export async function expectTargetsOf(page: Page, leastPx: number): Promise<void> {
  const low = await page.evaluate(lowTargets, leastPx)
  expect.soft(low, `lower than ${leastPx} px on ${page.url()}`).toEqual([])
}

/** Runs in the page. Tries every pixel above and below the middle, since some targets reach beyond their box. */
function lowTargets(leastPx: number): string[] {
  const pressed = 'a[href], button, input:not([hidden]), select, textarea, [role="button"]'
  const targets = new Set(
    [...document.querySelectorAll<HTMLElement>(pressed)].map((element) => {
      const isChoice = element.matches('input[type="radio"], input[type="checkbox"]')
      return (isChoice && element.closest('label')) || element
    })
  )
  const dialog = document.querySelector<HTMLElement>('dialog[open]')
  return [...targets].flatMap((target) => {
    target.scrollIntoView({ block: 'center', behavior: 'instant' })
    const { left, right, top, bottom } = target.getBoundingClientRect()
    const isOff =
      !target.checkVisibility() || bottom === top || (dialog && !dialog.contains(target))
    if (isOff) return []
    const x = (left + right) / 2
    const takes = (y: number) => {
      const hit = document.elementFromPoint(x, y)
      return hit !== null && (target.contains(hit) || hit.contains(target))
    }
    const middle = (top + bottom) / 2
    let above = middle
    let below = middle
    while (above > middle - leastPx && takes(above - 1)) above--
    while (below < middle + leastPx && takes(below + 1)) below++
    const height = Math.max(bottom - top, below - above + 1)
    return height >= leastPx - 1 ? [] : [`${height} px: ${target.outerHTML.slice(0, 120)}`]
  })
}

import type { Locator } from '@playwright/test'

import { makeReady } from './support/day'
import type { PhotoFile } from './support/photo'
import { expect, type Page, routes, test } from './support/test'

/** Taps on a lead's screen, counted, since a lead has few to give. */
function counting() {
  let taps = 0
  return {
    tap: async (what: Locator) => {
      taps++
      await what.tap()
    },
    count: () => taps,
  }
}

const picks = (page: Page) => page.getByRole('region', { name: 'Pick to deal' })

test('three taps and a line round the trees deal them', async ({ orchard, asPerson }) => {
  await orchard.must('Bo', 'claim_tree', { tree: 14 })
  const lee = await asPerson('Lee', { device: 'tablet' })
  await lee.goto(routes.map())
  const map = lee.getByRole('application')
  await expect(map).toBeVisible()
  const { tap, count } = counting()

  await tap(lee.getByRole('button', { name: 'Draw around' }))
  const bar = picks(lee)
  await expect(bar).toBeVisible()
  await drawAround(lee, map)
  await expect(bar.getByRole('heading', { name: '36 trees picked' })).toBeVisible()
  await tap(bar.locator('label').filter({ hasText: 'Ann' }).first())
  await expect(bar.getByText('1 of them cannot be dealt:')).toBeVisible()
  await expect(bar.getByText('in progress (Bo)')).toBeVisible()
  await tap(bar.getByRole('button', { name: 'Deal 35 to Ann' }))

  await expect(lee.getByText('35 trees are dealt to Ann.')).toBeVisible()
  expect(count()).toBe(3)
})

test('corners that are tapped do the same as a line, and what was drawn can be taken back', async ({
  asPerson,
}) => {
  const lee = await asPerson('Lee', { device: 'tablet' })
  await lee.goto(routes.map())
  const map = lee.getByRole('application')
  await expect(map).toBeVisible()

  await lee.getByRole('button', { name: 'Draw around' }).tap()
  await expect(picks(lee)).toBeVisible()
  const { x, y, width, height } = await boxOf(map)
  for (const [left, top] of cornersIn(width, height)) await lee.touchscreen.tap(x + left, y + top)
  await expect(picks(lee).getByRole('heading', { name: '36 trees picked' })).toBeVisible()

  await lee.getByRole('button', { name: 'Take back the last line' }).tap()
  await expect(picks(lee).getByRole('heading', { name: '36 trees picked' })).toBeHidden()
})

test('what is picked and filtered is still there after another screen, a turn and a stop', async ({
  orchard,
  asPerson,
}) => {
  const lee = await asPerson('Lee', { device: 'tablet' })
  await lee.goto(routes.map())
  await lee.getByRole('button', { name: 'Filter', exact: true }).tap()
  await lee.getByRole('dialog').locator('label').filter({ hasText: 'Pear' }).tap()
  await expect(lee.getByRole('dialog').getByText('Shows 1 of 36 trees.')).toBeVisible()
  await lee.getByRole('dialog').getByRole('button', { name: 'Close' }).tap()
  await lee.getByRole('button', { name: 'Draw around' }).tap()
  await drawAround(lee, lee.getByRole('application'))
  await expect(picks(lee).getByRole('heading', { name: '1 tree picked' })).toBeVisible()

  await lee.setViewportSize({ width: 1180, height: 820 })
  await orchard.must('Bo', 'stop_work', {})
  await lee.getByRole('button', { name: 'I have stopped' }).tap()
  await lee.getByRole('link', { name: 'People' }).tap()
  await lee.getByRole('link', { name: 'Map' }).tap()

  await expect(picks(lee).getByRole('heading', { name: '1 tree picked' })).toBeVisible()
  await lee.getByRole('button', { name: 'Drawn' }).tap()
  await expect(lee.getByText('Shows 1 of 36 trees.')).toBeVisible()
})

test('a tree is found as it is said, taken back from whom it is dealt to, and left out of the round', async ({
  orchard,
  asPerson,
}) => {
  await orchard.must('Lee', 'deal_trees', { trees: [17], to: [orchard.idOf('Bo')] })
  const lee = await asPerson('Lee', { device: 'tablet' })
  await lee.goto(routes.map())
  await lee.getByRole('button', { name: 'Find a tree' }).tap()
  const dialog = lee.getByRole('dialog', { name: 'Find a tree' })
  await dialog.getByLabel('Block, row, tree').fill('the old one')
  await dialog.getByRole('button', { name: 'Show it' }).tap()
  await expect(dialog.getByText('That names no tree.')).toBeVisible()
  await dialog.getByLabel('Block, row, tree').fill('2/5')
  await lee.keyboard.press('Enter')

  const panel = lee.getByRole('complementary', { name: 'Tree' })
  await expect(panel.getByText('Dealt to Bo')).toBeVisible()
  await panel.getByRole('button', { name: 'Pick this tree' }).tap()
  await picks(lee).getByRole('button', { name: 'Take back 1' }).tap()
  await expect(lee.getByText('1 tree is taken back.')).toBeVisible()
  await expect(panel.getByText('Dealt to Bo')).toBeHidden()

  const sheet = lee.getByRole('dialog', { name: 'Not this round' })
  await panel.getByRole('button', { name: 'Not this round' }).tap()
  await sheet.getByRole('button', { name: 'Wet ground' }).tap()
  await sheet.getByRole('button', { name: 'Leave 1 tree out of this round' }).tap()
  await expect(lee.getByText('1 tree is left out of this round.')).toBeVisible()
  await panel.getByRole('button', { name: 'Pick all of row 2' }).tap()
  await panel.getByRole('button', { name: 'Pick this tree' }).tap()
  await picks(lee).getByRole('button', { name: 'Bring 1 tree back' }).tap()
  await expect(lee.getByText('1 tree is in this round again.')).toBeVisible()
  await panel.getByRole('button', { name: 'Pick all of row 2' }).tap()
  await picks(lee).getByRole('button', { name: 'Not this round' }).tap()
  await sheet.getByLabel('Why not?').fill('A wasps’ nest in the row.')
  await sheet.getByRole('button', { name: 'Leave 12 trees out of this round' }).tap()
  await expect(lee.getByText('12 trees are left out of this round.')).toBeVisible()
  expect(await orchard.heard('trees_left_out')).toHaveLength(3)
})

test('after two fingers and after a double tap, a tap still means the tree that is there', async ({
  asPerson,
}) => {
  const lee = await asPerson('Lee', { device: 'tablet' })
  await lee.emulateMedia({ reducedMotion: 'no-preference' })
  await lee.goto(routes.map())
  const panel = lee.getByRole('complementary', { name: 'Tree' })
  const isPicked = panel.getByRole('button', { name: 'Drop from the pick' })
  await find(lee, '2/5')
  await lee.getByRole('button', { name: 'Pick to deal' }).tap()
  // Once more: the bar took room from the map.
  await find(lee, '2/5')
  const { x, y, width, height } = await boxOf(lee.getByRole('application'))
  const at = [x + width / 2, y + height / 2] as const
  const settle = () => expect(lee.locator('.leaflet-zoom-anim')).toHaveCount(0)

  await pinch(lee, at, { from: 40, to: 110 })
  await settle()
  await lee.touchscreen.tap(...at)
  await expect(isPicked).toBeVisible()
  await pinch(lee, at, { from: 140, to: 30 })
  await settle()
  await lee.touchscreen.tap(...at)
  await expect(isPicked).toBeHidden()

  // Two taps that zoom also pick and drop.
  await lee.touchscreen.tap(...at)
  await lee.touchscreen.tap(...at)
  await settle()
  await lee.touchscreen.tap(...at)
  await expect(isPicked).toBeVisible()
})

test('the table deals trees by keyboard alone', async ({ orchard, asPerson }) => {
  const lee = await asPerson('Lee', { device: 'desktop' })
  await lee.goto(routes.map())
  await lee.getByRole('radio', { name: 'Map' }).focus()
  await lee.keyboard.press('ArrowRight')
  const table = lee.getByRole('grid', { name: 'Trees' })
  await expect(table).toHaveAttribute('aria-rowcount', '37')

  await tabTo(lee, table.getByRole('row', { name: /A 1·1 / }))
  await lee.keyboard.press('End')
  await expect(table.getByRole('row', { name: /A 3·12/ })).toBeFocused()
  await lee.keyboard.press('Home')
  await lee.keyboard.press('ArrowDown')
  await lee.keyboard.press('Space')
  await lee.keyboard.press('Shift+ArrowDown')
  await lee.keyboard.press('Shift+ArrowDown')
  await expect(table.getByRole('row', { selected: true })).toHaveCount(3)
  await tabTo(lee, picks(lee).getByRole('checkbox', { name: 'Ann' }).first())
  await lee.keyboard.press('Space')
  await tabTo(lee, picks(lee).getByRole('button', { name: 'Deal 3 to Ann' }))
  await lee.keyboard.press('Enter')

  await expect(lee.getByText('3 trees are dealt to Ann.')).toBeVisible()
  await expect(table.getByRole('row', { name: /A 1·2.*for Ann/ })).toBeVisible()
  await expect(table.getByRole('row', { name: /for Ann/ })).toHaveCount(3)
  expect(await orchard.heard('trees_dealt')).toHaveLength(1)
})

test('a stroke on a photo is seen by who may take the tree because of it', async ({
  orchard,
  asPerson,
}) => {
  await makeReady(orchard, 'Cy', 'P3')
  await orchard.must('Mo', 'end_skill', { subject: orchard.idOf('Cy'), skill: 'prunes_alone' })
  const lee = await asPerson('Lee', { device: 'tablet' })
  await lee.goto(routes.map(9))
  await lee.getByRole('button', { name: 'Mark the big cuts' }).tap()
  const dialog = lee.getByRole('dialog', { name: 'Big cuts on A 1·9' })
  await dialog.locator('input[type=file]').setInputFiles(await greyPhoto(lee))
  const photo = dialog.getByRole('img', { name: /0 lines drawn/ })
  await expect(photo).toBeVisible()
  const { x, y, width, height } = await boxOf(photo)
  await stroke(lee, [
    [x + width * 0.5, y + height * 0.8],
    [x + width * 0.5, y + height * 0.5],
    [x + width * 0.6, y + height * 0.2],
  ])
  await expect(dialog.getByRole('img', { name: /1 line drawn/ })).toBeVisible()
  await dialog.getByLabel('Which limbs?').fill('The one over the path.')
  await dialog.getByRole('button', { name: 'They are marked on the tree' }).tap()
  await expect(dialog).toBeHidden()

  const cy = await asPerson('Cy')
  await cy.goto(`${routes.nextTree()}?tree=9`)
  await cy.getByRole('button', { name: 'Claim this tree' }).tap()
  const marked = cy.getByRole('region', { name: 'What Lee marked' })
  await expect(marked.getByText('The one over the path.')).toBeVisible()
  const seen = marked.getByRole('img', { name: /Photo of A 1·9/ })
  await expect(seen).toBeVisible()
  expect(await redShare(seen)).toBeGreaterThan(0.002)
  await cy.getByRole('button', { name: 'Yes, claim it' }).tap()
  await expect(cy.getByRole('region', { name: 'What Lee marked' })).toBeVisible()
  const [sent] = await orchard.photos()
  expect(sent?.length).toBeLessThanOrEqual(200_000)
})

test('a lead hands a held tree on to somebody free, saying how the holder was reached', async ({
  orchard,
  asPerson,
}) => {
  await orchard.must('Bo', 'claim_tree', { tree: 14 })
  const lee = await asPerson('Lee', { device: 'tablet' })
  await lee.goto(routes.map(14))
  await lee.getByRole('button', { name: 'Hand on', exact: true }).tap()
  const dialog = lee.getByRole('dialog', { name: 'Hand on A 2·2' })
  const hand = dialog.getByRole('button', { name: 'Hand on', exact: true })
  await expect(hand).toHaveAttribute('aria-disabled', 'true')
  await dialog.locator('label').filter({ hasText: 'Ann' }).tap()
  await dialog.locator('label').filter({ hasText: 'Spoke in person' }).tap()
  await hand.tap()

  const panel = lee.getByRole('complementary', { name: 'Tree' })
  await expect(panel.getByText('Ann holds it')).toBeVisible()
})

async function find(page: Page, tree: string): Promise<void> {
  await page.getByRole('button', { name: 'Find a tree' }).tap()
  const dialog = page.getByRole('dialog', { name: 'Find a tree' })
  await dialog.getByLabel('Block, row, tree').fill(tree)
  await page.keyboard.press('Enter')
  await expect(dialog).toBeHidden()
}

/** Two fingers beside a point, moved apart or together; Playwright has only one. */
async function pinch(
  page: Page,
  [x, y]: readonly [number, number],
  { from, to }: { from: number; to: number }
): Promise<void> {
  const browser = await page.context().newCDPSession(page)
  const touch = (type: 'touchStart' | 'touchMove', away: number) =>
    browser.send('Input.dispatchTouchEvent', {
      type,
      touchPoints: [
        { x: x - away, y, id: 1 },
        { x: x + away, y, id: 2 },
      ],
    })
  await touch('touchStart', from)
  for (let step = 1; step <= 8; step++) await touch('touchMove', from + ((to - from) * step) / 8)
  await browser.send('Input.dispatchTouchEvent', { type: 'touchEnd', touchPoints: [] })
  await browser.detach()
}

/** Well inside the map's edges, away from what lies over it below. */
function cornersIn(width: number, height: number): [number, number][] {
  return [
    [4, 4],
    [width - 4, 4],
    [width - 4, height - 76],
    [4, height - 76],
  ]
}

async function drawAround(page: Page, map: Locator): Promise<void> {
  const { x, y, width, height } = await boxOf(map)
  const corners = cornersIn(width, height)
  await stroke(
    page,
    corners.map(([left, top]) => [x + left, y + top])
  )
}

/** By mouse: Playwright's finger only taps. The page hears the same pointer events. */
async function stroke(page: Page, points: [number, number][]): Promise<void> {
  const [[x, y] = [0, 0], ...rest] = points
  await page.mouse.move(x, y)
  await page.mouse.down()
  for (const [toX, toY] of rest) await page.mouse.move(toX, toY, { steps: 8 })
  await page.mouse.up()
}

/** Nothing on it, so that whatever is red was drawn. */
async function greyPhoto(page: Page): Promise<PhotoFile> {
  const bytes = await page.evaluate(async () => {
    const canvas = new OffscreenCanvas(1600, 1200)
    const pen = canvas.getContext('2d')
    if (!pen) throw new Error('This browser cannot draw.')
    pen.fillStyle = '#9a9a9a'
    pen.fillRect(0, 0, canvas.width, canvas.height)
    const blob = await canvas.convertToBlob({ type: 'image/jpeg' })
    return [...new Uint8Array(await blob.arrayBuffer())]
  })
  return { name: 'tree.jpg', mimeType: 'image/jpeg', buffer: Buffer.from(bytes) }
}

async function boxOf(what: Locator) {
  const box = await what.boundingBox()
  if (!box) throw new Error('It is not on the screen.')
  return box
}

async function tabTo(page: Page, goal: Locator): Promise<void> {
  for (let presses = 0; presses < 60; presses++) {
    if (await goal.evaluate((element) => element === document.activeElement)) return
    await page.keyboard.press('Tab')
  }
  throw new Error('No way there by Tab.')
}

/** How much of a picture is as red as what is drawn on it. */
async function redShare(image: Locator): Promise<number> {
  return image.evaluate(async (element: HTMLImageElement) => {
    await element.decode()
    const canvas = new OffscreenCanvas(element.naturalWidth, element.naturalHeight)
    const pen = canvas.getContext('2d')
    pen?.drawImage(element, 0, 0)
    const { data } = pen?.getImageData(0, 0, canvas.width, canvas.height) ?? { data: [] }
    let red = 0
    for (let at = 0; at < data.length; at += 4) {
      const [r = 0, g = 0, b = 0] = [data[at], data[at + 1], data[at + 2]]
      if (Math.abs(r - 192) < 30 && Math.abs(g - 58) < 30 && b < 40) red++
    }
    return red / (data.length / 4)
  })
}

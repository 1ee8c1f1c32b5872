import jsQR from 'jsqr'

import { expect, type Page, routes, test } from './support/test'

/** How far a printed edge may be off: less than a printer's own error. */
const offMm = 0.1

test('labels of a block come out as large as the sheet says, and a scanned one opens its tree, for a newcomer after joining', async ({
  orchard,
  asPerson,
  asNewcomer,
}) => {
  const lee = await asPerson('Lee', { device: 'desktop' })
  await lee.goto(routes.labels())
  await lee.getByRole('combobox', { name: 'Sheet' }).selectOption({ label: label70x37 })
  await lee.getByRole('textbox', { name: 'To row' }).fill('2')
  await lee.getByRole('textbox', { name: 'Begin at label' }).fill('5')
  await expect(lee.getByText('24 labels on 2 sheets')).toBeVisible()
  await lee.emulateMedia({ media: 'print' })

  // Three across and eight down on 210 by 297 mm leave half a millimetre above.
  expect(await boxMm(lee, 'A 1·1')).toEqual(near({ x: 70, y: 37.5, width: 70, height: 37 }))
  const pdf = (await lee.pdf({ preferCSSPageSize: true })).toString('latin1')
  const pages = [...pdf.matchAll(/\/MediaBox ?\[ ?0 0 ([\d.]+) ([\d.]+)\]/g)]
  expect(pages.map(([, wide, high]) => [mmOfPt(wide), mmOfPt(high)])).toEqual([
    [210, 297],
    [210, 297],
  ])

  const address = await scanned(lee, 'A 1·3')
  const ann = await asPerson('Ann')
  await ann.goto(address)
  await expect(ann.getByRole('img', { name: /1·3|row 1, tree 3/i }).first()).toBeVisible()
  const newcomer = await asNewcomer()
  await newcomer.goto(address)
  await expect(newcomer.getByText('You scanned the code of a tree.')).toBeVisible()
  await newcomer.goto(await orchard.link('Lee', { kind: 'join' }))
  await newcomer.getByRole('textbox', { name: 'Your name' }).fill('Kit')
  await newcomer.getByText('Adult').tap()
  await newcomer.getByRole('button', { name: 'Join the crew' }).tap()
  await expect(newcomer).toHaveURL(new RegExp(`${new URL(address).pathname}$`))
})

const label70x37 = 'A4, 24 labels of 70 × 37 mm'

type Box = { x: number; y: number; width: number; height: number }

/** Where a label lies on its sheet. */
async function boxMm(page: Page, tag: string): Promise<Box> {
  const sheet = await page.getByRole('region', { name: 'Sheet 1' }).boundingBox()
  const box = await page.getByRole('article', { name: tag, exact: true }).boundingBox()
  if (!sheet || !box) throw new Error('The label is on the first sheet.')
  return {
    x: mmOfPx(box.x - sheet.x),
    y: mmOfPx(box.y - sheet.y),
    width: mmOfPx(box.width),
    height: mmOfPx(box.height),
  }
}

function near(box: Box) {
  const entries = Object.entries(box).map(([side, mm]) => [
    side,
    expect.closeTo(mm, -Math.log10(2 * offMm)),
  ])
  return Object.fromEntries(entries)
}

/** A pixel of CSS is 1/96 inch, a point 1/72. */
function mmOfPx(px: number): number {
  return (px / 96) * 25.4
}

function mmOfPt(points: string | undefined): number {
  return Math.round((Number(points) / 72) * 25.4)
}

/** As a phone's camera reads the printed code, by a reader that is not ours. */
async function scanned(page: Page, tag: string): Promise<string> {
  const code = page.getByRole('article', { name: tag, exact: true }).getByRole('img')
  const picture = (await code.screenshot({ scale: 'css' })).toString('base64')
  const { pixels, width, height } = await page.evaluate(async (png) => {
    const image = new Image()
    image.src = `data:image/png;base64,${png}`
    await image.decode()
    const canvas = new OffscreenCanvas(image.width * 4, image.height * 4)
    const pencil = canvas.getContext('2d')
    if (!pencil) throw new Error('This browser draws no canvas.')
    pencil.imageSmoothingEnabled = false
    pencil.drawImage(image, 0, 0, canvas.width, canvas.height)
    const { data, width, height } = pencil.getImageData(0, 0, canvas.width, canvas.height)
    return { pixels: [...data], width, height }
  }, picture)
  const found = jsQR(new Uint8ClampedArray(pixels), width, height)
  if (!found) throw new Error(`The code of ${tag} is not readable.`)
  return found.data
}

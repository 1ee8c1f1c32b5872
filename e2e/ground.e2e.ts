import { groundAddress } from './support/host'
import { expect, type Page, routes, test } from './support/test'

const png = Buffer.from(
  'iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAYAAAAfFcSJAAAADUlEQVR42mNk+M9QDwADhgGAWjR9awAAAABJRU5ErkJggg==',
  'base64'
)

test('a lead lays the ground under the map; nobody else is asked for it before, and whose it is is said', async ({
  asPerson,
}) => {
  const lee = await asPerson('Lee', { device: 'tablet' })
  const asked: string[] = []
  await lee.context().route(`${groundAddress}/**`, async (route) => {
    asked.push(new URL(route.request().url()).pathname)
    await route.fulfill({ contentType: 'image/png', body: png })
  })
  await lee.goto(routes.map())
  await expect(lee.getByRole('button', { name: 'Find a tree' })).toBeVisible()
  expect(asked).toEqual([])

  await lee.getByRole('button', { name: 'Ground from another site' }).tap()

  await expect(lee.getByText('The pictures come from ground.example.')).toBeVisible()
  await expect(lee.getByText('Ground Example', { exact: true })).toBeVisible()
  await expect.poll(() => asked.length).toBeGreaterThan(0)
  await expect(lee.locator('img[src^="https://ground.example/"]').first()).toHaveJSProperty(
    'naturalWidth',
    1
  )
  // Beside the trees the map lets it through.
  await expect.poll(() => lee.evaluate(opacityOfCorner)).toBe(0)
  await lee.getByRole('button', { name: 'Hide the ground' }).tap()
  await expect.poll(() => lee.evaluate(opacityOfCorner)).toBe(255)
  await expect(lee.locator('img[src^="https://ground.example/"]')).toHaveCount(0)
})

test('a manager lays their own picture under the map by three trees; a lead sees it there, and prints it', async ({
  asPerson,
}) => {
  const mo = await asPerson('Mo', { device: 'tablet' })
  await mo.goto(routes.aerial())
  const choosing = mo.waitForEvent('filechooser')
  await mo.getByRole('button', { name: 'Choose a picture' }).tap()
  await (await choosing).setFiles(await redPicture(mo))
  const picture = mo.getByRole('img', { name: 'The picture. Tap where the tree stands.' })
  const { width, height } = (await picture.boundingBox()) ?? { width: 0, height: 0 }
  const corners = [
    { tag: 'A 1·1', x: 0.1, y: 0.9 },
    { tag: 'A 1·12', x: 0.1, y: 0.1 },
    { tag: 'A 3·1', x: 0.9, y: 0.9 },
  ]
  for (const [at, { tag, x, y }] of corners.entries()) {
    const name = `Tree ${at + 1}`
    await mo.locator('label').filter({ hasText: name }).tap()
    await picture.tap({ position: { x: x * width, y: y * height } })
    await mo.getByRole('group', { name, exact: true }).getByLabel('Its tag').fill(tag)
  }
  await mo.getByRole('button', { name: 'Put it under the map' }).tap()
  await expect(mo.getByText('It is under the map.')).toBeVisible()

  const lee = await asPerson('Lee', { device: 'tablet' })
  await lee.goto(routes.map())
  expect(await lee.evaluate(hasRed)).toBe(false)
  await lee.getByRole('button', { name: 'Picture', exact: true }).tap()
  await expect.poll(() => lee.evaluate(hasRed)).toBe(true)

  await lee.goto(routes.paper())
  const map = lee.getByRole('img', { name: 'Map: Varnholt' })
  await expect(map.locator('image')).toHaveCount(0)
  await lee.locator('label').filter({ hasText: 'Our picture from above' }).tap()
  await expect(map.locator('image')).toHaveCount(1)
})

/** Taken with the corners of the block near its own. */
async function redPicture(page: Page): Promise<{ name: string; mimeType: string; buffer: Buffer }> {
  const base64 = await page.evaluate(async () => {
    const canvas = new OffscreenCanvas(200, 900)
    const pen = canvas.getContext('2d')
    if (pen) pen.fillStyle = '#d00000'
    pen?.fillRect(0, 0, 200, 900)
    const bytes = new Uint8Array(
      await (await canvas.convertToBlob({ type: 'image/png' })).arrayBuffer()
    )
    return btoa(String.fromCharCode(...bytes))
  })
  return { name: 'above.png', mimeType: 'image/png', buffer: Buffer.from(base64, 'base64') }
}

function hasRed(): boolean {
  const canvas = document.querySelector<HTMLCanvasElement>('.orchard-map canvas')
  const dots = canvas?.getContext('2d')?.getImageData(0, 0, canvas.width, canvas.height).data ?? []
  let red = 0
  for (let at = 0; at < dots.length; at += 4)
    if ((dots[at] ?? 0) > (dots[at + 1] ?? 0) + 90 && (dots[at] ?? 0) > (dots[at + 2] ?? 0) + 90)
      red++
  return red > dots.length / 4 / 200
}

function opacityOfCorner(): number | undefined {
  const canvas = document.querySelector<HTMLCanvasElement>('.orchard-map canvas')
  return canvas?.getContext('2d')?.getImageData(2, 2, 1, 1).data[3]
}

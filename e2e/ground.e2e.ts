import { groundAddress } from './support/host'
import { expect, routes, test } from './support/test'

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

  await lee.getByRole('button', { name: 'Ground from elsewhere' }).tap()

  await expect(lee.getByText('The pictures come from ground.example.')).toBeVisible()
  await expect(lee.getByText('Ground Example', { exact: true })).toBeVisible()
  await expect.poll(() => asked.length).toBeGreaterThan(0)
  await expect(lee.locator('img[src^="https://ground.example/"]').first()).toHaveJSProperty(
    'naturalWidth',
    1
  )
  // Beside the trees the map lets it through.
  await expect.poll(() => lee.evaluate(opacityOfCorner)).toBe(0)
  await lee.getByRole('button', { name: 'Ground away' }).tap()
  await expect.poll(() => lee.evaluate(opacityOfCorner)).toBe(255)
  await expect(lee.locator('img[src^="https://ground.example/"]')).toHaveCount(0)
})

function opacityOfCorner(): number | undefined {
  const canvas = document.querySelector<HTMLCanvasElement>('.orchard-map canvas')
  return canvas?.getContext('2d')?.getImageData(2, 2, 1, 1).data[3]
}

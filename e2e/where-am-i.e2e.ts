import { expect, type Page, routes, test } from './support/test'
import { corner } from './support/things'

/** Less than a metre from tree 1, with figures that stand nowhere else. */
const here = { latitude: corner.lat + 0.0000047, longitude: corner.lon + 0.0000031 }

test('a volunteer finds out which tree they are at, hears how unsure that is, and their position never leaves the phone', async ({
  asPerson,
}) => {
  const ann = await asPerson('Ann')
  const sent = listenTo(ann)
  await ann.context().grantPermissions(['geolocation'])
  await ann.context().setGeolocation({ ...here, accuracy: 1 })
  await ann.goto(routes.nextTree())
  await ann.getByRole('button', { name: 'I am somewhere else' }).tap()
  await ann.getByRole('button', { name: 'Find me with this device' }).tap()
  await expect(ann.getByText('You are at A 1·1')).toBeVisible()

  await ann.context().setGeolocation({ ...here, accuracy: 12 })
  await expect(ann.getByText(/It may be any of \d+ trees/)).toBeVisible()
  await expect(ann.getByText('This device may be off by 12 m')).toBeVisible()
  await ann.getByRole('button', { name: /^A 1·2 4 m, 6 paces, to the north/ }).tap()

  await expect(ann.getByText('Counted from A 1·2, where you said you are')).toBeVisible()
  await ann.getByRole('button', { name: 'Claim this tree' }).tap()
  await ann.getByRole('button', { name: 'Yes, claim it' }).tap()
  await expect(ann).toHaveURL(/\/tree\/\d+$/)
  // The claim is among what was sent, so what is looked for would have been seen.
  expect(sent.join('\n')).toContain('claim_tree')
  const theirs = [here.latitude, here.longitude].flatMap((degrees) => [
    degrees.toFixed(7).slice(0, -3),
    String(Math.round(degrees * 1e7)).slice(0, -1),
  ])
  expect(sent.filter((said) => theirs.some((digits) => said.includes(digits)))).toEqual([])
})

test('who does not allow it is told what to do', async ({ asPerson }) => {
  const lee = await asPerson('Lee', { device: 'tablet' })
  await lee.goto(routes.map())

  await lee.getByRole('button', { name: 'Where am I?' }).tap()

  await expect(lee.getByText('This page may not know where the device is.')).toBeVisible()
  await lee.context().grantPermissions(['geolocation'])
  await lee.context().setGeolocation({ ...here, accuracy: 3 })
  await lee.getByRole('button', { name: 'Try again' }).tap()
  await lee.getByRole('button', { name: /^A 1·1 / }).tap()
  await expect(lee.getByRole('complementary', { name: 'Tree' })).toBeVisible()
})

test('a device that cannot say where it is says why', async ({ asPerson }) => {
  const ann = await asPerson('Ann')
  // As a browser does where no satellite is heard, and on a page without https.
  await ann.addInitScript(() => {
    const lost = { code: 2, PERMISSION_DENIED: 1 } as GeolocationPositionError
    navigator.geolocation.watchPosition = (_, onError) => {
      onError?.(lost)
      return 1
    }
  })
  const find = async () => {
    await ann.goto(routes.nextTree())
    await ann.getByRole('button', { name: 'I am somewhere else' }).tap()
    await ann.getByRole('button', { name: 'Find me with this device' }).tap()
  }
  await find()
  await expect(ann.getByText(/^The device does not know where it is/)).toBeVisible()
  await expect(ann.getByRole('button', { name: 'Try again' })).toBeVisible()

  await ann.addInitScript(() => Object.defineProperty(window, 'isSecureContext', { value: false }))
  await find()
  await expect(ann.getByText(/^This page has no https address/)).toBeVisible()
})

/** Everything that goes out: addresses, bodies, and what is said over sockets. */
function listenTo(page: Page): string[] {
  const sent: string[] = []
  page.on('request', (request) => sent.push(`${request.url()} ${request.postData() ?? ''}`))
  page.on('websocket', (socket) =>
    socket.on('framesent', ({ payload }) => sent.push(payload.toString()))
  )
  return sent
}

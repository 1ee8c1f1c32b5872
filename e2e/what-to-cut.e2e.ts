import { loseSignal } from './support/phone'
import { expect, type Page, routes, test } from './support/test'

test('a middle bearer and a tip bearer side by side say different things, by thumb, by key and by button', async ({
  asPerson,
}) => {
  const ann = await asPerson('Ann')
  const bo = await asPerson('Bo')
  await ann.goto(routes.shortenAtTree(25))
  await bo.goto(routes.shortenAtTree(26))

  await expect(ann.getByRole('heading', { level: 1 })).toContainText('the outer third')
  await expect(ann.getByRole('status').filter({ hasText: 'May go.' })).toBeVisible()
  await expect(bo.getByRole('heading', { level: 1 })).toContainText('leave the tips')
  await expect(bo.getByRole('status').filter({ hasText: 'Do not shorten.' })).toContainText(
    'It would cost 57% of the fruit buds.'
  )
  await expect(bo.getByRole('status').filter({ hasText: 'may be cut to a bud.' })).toBeVisible()
  await bo.getByRole('slider', { name: 'Length of the shoot' }).press('Home')
  await expect(bo.getByRole('status').filter({ hasText: 'Up to 23 cm: leave it.' })).toBeVisible()

  const taken = ann.getByRole('slider', { name: 'How much goes' })
  await tapAt(ann, taken, 0.9)
  await expect(ann.getByText('Too much. Not more than 33%.')).toBeVisible()
  const drawnBefore = await ann.getByRole('img').first().getAttribute('aria-label')

  await taken.press('Home')
  await expect(ann.getByText('60 cm stay, 0 cm go.')).toBeVisible()
  for (let step = 0; step < 4; step++) await taken.press('ArrowRight')
  await expect(ann.getByText('40 cm stay, 20 cm go.')).toBeVisible()
  await expect(ann.getByText('13% of its fruit buds go.')).toBeVisible()
  expect(await ann.getByRole('img').first().getAttribute('aria-label')).not.toBe(drawnBefore)

  await ann.getByRole('button', { name: 'More', exact: true }).tap()
  await expect(ann.getByText('Too much. Not more than 33%.')).toBeVisible()
})

test('without signal the tree in hand shows which tool, and what is not ours', async ({
  orchard,
  asPerson,
}) => {
  await orchard.must('Ann', 'claim_tree', { tree: 26 })
  const ann = await asPerson('Ann')
  await ann.goto(routes.tree(26))
  await expect(ann.getByRole('link', { name: 'Which tool, how to cut' })).toBeVisible()
  await loseSignal(ann)

  await ann.getByRole('link', { name: 'Which tool, how to cut' }).tap()
  await expect(ann.getByRole('heading', { level: 1, name: 'Which tool' })).toBeInViewport()
  const thickness = ann.getByRole('slider', { name: 'How thick where you would cut' })
  await thickness.press('Home')
  await expect(ann.getByRole('status').filter({ hasText: 'Hand pruner' })).toBeVisible()
  for (let step = 0; step < 9; step++) await thickness.press('ArrowRight')
  await expect(ann.getByText(/^From below, 1.7 cm deep, 30 cm out/)).toBeVisible()
  await thickness.press('End')

  await expect(ann.getByText('Thicker than 10 cm: not yours.')).toBeVisible()
  await expect(ann.getByRole('link', { name: 'Flag and refer' })).toBeVisible()
  await ann.getByRole('link', { name: 'Back' }).tap()
  await expect(ann.getByRole('heading', { level: 1 })).toContainText('Fernoth')
})

/** With a thumb, so far along it. */
async function tapAt(page: Page, slider: ReturnType<Page['getByRole']>, share: number) {
  const box = await slider.boundingBox()
  if (!box) throw new Error('The slider is not on the screen.')
  await page.touchscreen.tap(box.x + box.width * share, box.y + box.height / 2)
}

test('limbs are noted by turning the phone, held flat; and a phone that asks first is asked', async ({
  asPerson,
}) => {
  const lee = await asPerson('Lee')
  const turn = await compassOf(lee)
  await turn({ awayFromNorth: 90 })
  await lee.goto(routes.limbsOfTree(25))
  await lee.getByRole('button', { name: 'Point the phone along a limb' }).tap()

  await expect(lee.getByRole('status').filter({ hasText: '90°, east' })).toBeVisible()
  await lee.getByRole('button', { name: 'Add this limb' }).first().tap()
  await turn({ awayFromNorth: 225, raised: 80 })
  await expect(lee.getByRole('status').filter({ hasText: 'Lay it flat' })).toBeVisible()
  await expect(lee.getByText('Limb 2')).toBeHidden()
  await turn({ awayFromNorth: 225 })
  await expect(lee.getByRole('status').filter({ hasText: '225°, south-west' })).toBeVisible()
  await lee.getByRole('button', { name: 'Add this limb' }).first().tap()
  await expect(lee.getByText('Limb 2: 225°, south-west')).toBeVisible()

  const ann = await asPerson('Ann')
  await ann.addInitScript(asksFirst, 'denied')
  await ann.goto(routes.limbsOfTree(25))
  await ann.getByRole('button', { name: 'Point the phone along a limb' }).tap()
  await expect(ann.getByText('The compass was not allowed. Tap the circle instead.')).toBeVisible()
})

/** A browser that wants to be asked for its compass, by a tap, and answers so. */
function asksFirst(answer: string): void {
  Object.assign(DeviceOrientationEvent, {
    requestPermission: () =>
      navigator.userActivation.isActive ? Promise.resolve(answer) : Promise.reject(new Error()),
  })
}

type Turned = { awayFromNorth: number; raised?: number }

/** Chromium's own sensors, turned from outside: flat, so far from north with the clock, its top so far raised. */
async function compassOf(page: Page): Promise<(turned: Turned) => Promise<void>> {
  const devtools = await page.context().newCDPSession(page)
  const type = 'absolute-orientation'
  await devtools.send('Emulation.setSensorOverrideEnabled', { enabled: true, type })
  return async ({ awayFromNorth, raised = 0 }) => {
    const [z, x] = [-awayFromNorth, raised].map((degrees) => (degrees * Math.PI) / 360) as [
      number,
      number,
    ]
    // First about the vertical, then about the phone's own side.
    const quaternion = {
      x: Math.cos(z) * Math.sin(x),
      y: Math.sin(z) * Math.sin(x),
      z: Math.sin(z) * Math.cos(x),
      w: Math.cos(z) * Math.cos(x),
    }
    await devtools.send('Emulation.setSensorOverrideReadings', { type, reading: { quaternion } })
  }
}

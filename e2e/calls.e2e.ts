import { watchHand } from './support/hand'
import { findSignal, loseSignal } from './support/phone'
import { expect, routes, test } from './support/test'

/** A minute of real time goes by without an answer. */
const overAMinute = { timeout: 90_000 }

test('an injury asks the lead, after a minute everybody who leads, and is answered, ended and written down', async ({
  orchard,
  asPerson,
}) => {
  test.slow()
  await orchard.must('Ann', 'claim_tree', { tree: 5 })
  const ann = await asPerson('Ann')
  const bo = await asPerson('Bo')
  const lee = await asPerson('Lee', { device: 'tablet' })
  const mo = await asPerson('Mo', { device: 'desktop' })
  await bo.goto(routes.nextTree())
  await mo.goto(routes.board())
  await lee.addInitScript(looksUntouched)
  await lee.goto(routes.map())
  await ann.goto(routes.tree(5))

  // A page that nobody touched makes no sound, and says so.
  await expect(lee.getByText('This device is silent until it is touched.')).toBeVisible()
  await lee.getByRole('button', { name: 'Turn on sound' }).tap()
  await expect(lee.getByText('This device is silent until it is touched.')).toHaveCount(0)

  // What helps first is there before anything is sent.
  await ann.getByRole('link', { name: 'Call lead' }).tap()
  await ann.getByRole('button', { name: 'Somebody is hurt' }).tap()
  await expect(ann.getByRole('link', { name: 'Call 112' })).toHaveAttribute('href', 'tel:112')
  await expect(ann.getByText('Coordinates')).toBeVisible()
  await expect(ann.getByText('Way in for an ambulance')).toBeVisible()
  expect(await orchard.heard('call_made')).toEqual([])
  await ann.getByRole('button', { name: 'Call a lead too' }).tap()
  await expect(ann.getByRole('heading', { name: 'Your call is sent' })).toBeVisible()

  const coming = { name: 'I am coming: Ann: somebody is hurt' }
  await expect(lee.getByRole('button', coming)).toBeVisible()
  await expect(mo.getByRole('button', coming)).toHaveCount(0)
  await expect(mo.getByRole('button', coming)).toBeVisible(overAMinute)
  await expect(ann.getByRole('heading', { name: /^Nobody has answered for 1 min/ })).toBeVisible()
  await expect(ann.getByText('Everybody who leads is asked, wherever they are.')).toBeVisible()

  const handOf = await watchHand(lee)
  await lee.getByRole('button', coming).tap()
  expect((await handOf()).taps).toBe(1)
  await expect(ann.getByRole('heading', { name: 'Lee is coming' })).toBeVisible()
  await expect(mo.getByText('Lee is coming', { exact: true })).toBeVisible()

  await lee.getByRole('button', { name: 'End: Ann: somebody is hurt' }).tap()
  const dialog = lee.getByRole('dialog')
  await dialog.getByLabel('What came of it, if you like').fill('Sat down, a friend drives')
  await dialog.getByRole('button', { name: 'End the call' }).tap()
  await expect(ann.getByRole('heading', { name: 'Call your lead' })).toBeVisible()

  await dialog.getByRole('link', { name: 'Write an incident' }).tap()
  const form = lee.getByRole('dialog', { name: 'Write an incident' })
  await expect(form.getByRole('radio', { name: 'Somebody was hurt' })).toBeChecked()
  await expect(form.getByText('A 1·5')).toBeVisible()
  await expect(form.getByText('No medical detail', { exact: false })).toBeVisible()
  const note = form.getByLabel('What happened, and what was done')
  await expect(note).toHaveValue('')
  await note.fill('A branch sprang back')
  await form.getByRole('button', { name: 'Keep it' }).tap()

  await mo.goto(routes.calls())
  await expect(mo.getByText('A branch sprang back')).toBeVisible()
  await expect(mo.getByText(/^Lee answered after 1 min/)).toBeVisible()
  await expect(mo.getByText('What came of it: Sat down, a friend drives')).toBeVisible()
  await expect(lee.getByText('A branch sprang back')).toBeVisible()
  // What happened to Ann stays between her and the leads.
  await expect(bo.getByRole('heading', { level: 1 })).toBeVisible()
  await expect(bo.getByText(/hurt|Ann/)).toHaveCount(0)
})

test('without signal a call is kept, says so with the other ways, and goes out by itself', async ({
  orchard,
  asPerson,
}) => {
  await orchard.must('Ann', 'claim_tree', { tree: 5 })
  const ann = await asPerson('Ann')
  const lee = await asPerson('Lee', { device: 'tablet' })
  await lee.goto(routes.map())
  await ann.goto(routes.tree(5))
  await loseSignal(ann)

  await ann.getByRole('link', { name: 'Call lead' }).tap()
  await ann.getByRole('button', { name: 'A tool' }).tap()
  await ann.getByLabel('A few words, if you like').fill('The saw sticks')
  await ann.getByRole('button', { name: /^Call a lead/ }).tap()

  await expect(ann.getByRole('heading', { name: 'Not sent yet' })).toBeVisible()
  await expect(ann.getByText('By voice')).toBeVisible()
  await expect(lee.getByText('Ann needs a tool')).toHaveCount(0)
  await findSignal(ann)
  await expect(lee.getByText('Ann needs a tool')).toBeVisible()
  await lee.getByRole('link', { name: 'Calls' }).tap()
  await expect(lee.getByText('“The saw sticks”')).toBeVisible()

  await ann.getByRole('button', { name: 'No longer needed' }).tap()
  await expect(lee.getByText('Nobody is calling.')).toBeVisible()
})

test('who is missing is told to everybody, to a lead on any screen, until the call is over', async ({
  orchard,
  asPerson,
}) => {
  await orchard.must('Bo', 'claim_tree', { tree: 7 })
  const ann = await asPerson('Ann')
  const bo = await asPerson('Bo')
  const lee = await asPerson('Lee')
  await bo.goto(routes.tree(7))
  await lee.goto(routes.nextTree())
  await ann.goto(routes.callLead())

  await ann.getByRole('button', { name: 'Somebody is missing' }).tap()
  const send = ann.getByRole('button', { name: /^Call a lead/ })
  await expect(send).toHaveAccessibleDescription('Say who is missing.')
  await ann.getByRole('radio', { name: 'Bo', exact: true }).check({ force: true })
  await expect(ann.getByText(/^Bo was at A 1·7 from/)).toBeVisible()
  await send.tap()

  await expect(bo.getByText('Ann is looking for you. Tell your lead where you are.')).toBeVisible()
  await expect(lee.getByText('Ann is looking for Bo · A 1·7')).toBeVisible()
  await lee.getByRole('link', { name: 'See' }).tap()
  const open = lee.getByRole('listitem').filter({ hasText: 'Ann is looking for Bo' })
  await open.getByRole('button', { name: /^I am coming/ }).tap()
  await expect(ann.getByRole('heading', { name: 'Lee is coming' })).toBeVisible()
  await ann.getByRole('button', { name: 'It is settled' }).tap()

  await expect(bo.getByText('Ann is looking for you.', { exact: false })).toHaveCount(0)
  await expect(lee.getByText('Nobody is calling.')).toBeVisible()
})

/** Runs in the page. The questions of this test count as touches for the browser; only real presses should. */
function looksUntouched(): void {
  const untouched = { hasBeenActive: false, isActive: false }
  Object.defineProperty(navigator, 'userActivation', { value: untouched })
}

import { makeReady } from './support/day'
import {
  arriveAndConsent,
  briefAsLead,
  checkProtectionAndTake,
  joinBy,
  signBriefing,
} from './support/getting-ready'
import { watchHand } from './support/hand'
import { expect, type Page, routes, test } from './support/test'

/**
 * Lee leads with a tablet, Mo follows on a desktop. Ann has a phone that sleeps in the middle of it; Bo and Cy share one;
 * Eve comes late with her own; Di has none.
 */
test('a whole day, from the late arrival to the closing, and its records add up', async ({
  orchard,
  asPerson,
  asNewcomer,
}) => {
  test.setTimeout(600_000)
  await makeReady(orchard, 'Cy', 'P3')
  await makeReady(orchard, 'Di', 'P4')
  await orchard.must('Lee', 'add_tool', { label: 'P5', kind: 'pruner' })
  const { tool: ladder = 0 } = await orchard.must('Lee', 'add_tool', {
    label: 'L1',
    kind: 'ladder',
  })
  await orchard.must('Mo', 'grant_skill', { subject: orchard.idOf('Ann'), skill: 'ladder' })
  await orchard.must('Ann', 'take_tool', { tool: ladder, failedItems: [] })
  const second = await orchard.link('Lee', { kind: 'device', subject: orchard.idOf('Cy') })
  const joinLink = await orchard.link('Lee', { kind: 'join' })

  const lee = await asPerson('Lee', { device: 'tablet' })
  const mo = await asPerson('Mo', { device: 'desktop' })
  const ann = await asPerson('Ann')
  const shared = await asPerson('Bo')
  const eve = await asNewcomer()
  await lee.goto(routes.map())
  await mo.goto(routes.board())
  await ann.goto(routes.nextTree())
  const crew = lee.getByRole('list', { name: 'Crew' })
  const inCrew = (name: string) => crew.getByRole('listitem').filter({ hasText: name })
  const counts = mo.getByRole('region', { name: 'Varnholt' })

  await test.step('somebody comes late, is briefed apart and gets ready', async () => {
    await joinBy(eve, joinLink, 'Eve')
    await arriveAndConsent(eve)
    await briefAsLead(lee, 'Eve')
    await signBriefing(eve)
    await checkProtectionAndTake(eve, 'P5')
    await expect(eve.getByRole('link', { name: 'Go on without a saw' })).toBeVisible()
    await lee.goto(routes.map())
  })

  await test.step('two share a phone: each takes a tree as themselves', async () => {
    await shared.goto(second)
    await shared.getByRole('button', { name: 'Make this device mine' }).tap()
    await expect(shared).toHaveURL(routes.nextTree())
    await claim(shared, 1)
    await expect(inCrew('Cy')).toContainText('A 1·1')
    await holdAs(shared, 'Bo')
    await claim(shared, 2)
    await expect(inCrew('Bo')).toContainText('A 1·2')
    await finish(shared, 2)
    await expect(counts).toContainText('1 of 36')
  })

  await test.step('a pair takes a tree that asks for a ladder', async () => {
    await ann.goto(`${routes.nextTree()}?tree=36`)
    await ann.getByRole('button', { name: 'Claim this tree' }).tap()
    await ann.getByText('With a ladder').tap()
    await ann.getByText('A helper', { exact: true }).tap()
    await ann.locator('label').filter({ hasText: /Bo$/ }).tap()
    await ann.getByRole('button', { name: 'Yes, claim it' }).tap()
    await expect(ann).toHaveURL(routes.tree(36))
    await expect(inCrew('Bo')).toContainText('A 3·12')
    await finish(ann, 36)
    await expect(counts).toContainText('2 of 36')
  })

  await test.step('the briefing changes: nobody takes the next tree before signing it', async () => {
    await lee.getByRole('link', { name: 'Shift' }).tap()
    await lee.getByRole('button', { name: 'Change the briefing' }).tap()
    await lee.getByRole('button', { name: 'Add a topic' }).tap()
    await lee
      .getByRole('dialog')
      .getByRole('button', { name: /ladder/i })
      .first()
      .tap()
    await lee.getByText('Before the next tree', { exact: true }).tap()
    await lee.getByRole('button', { name: 'Put out version 2' }).tap()
    await ann.goto(routes.ready())
    await expect(ann.getByText(/briefing/i).first()).toBeVisible()
    for (const name of ['Ann', 'Bo', 'Cy', 'Di'] as const) {
      await orchard.must(name, 'sign_briefing', { version: 2, language: 'en', how: 'heard' })
    }
    await lee.getByRole('link', { name: 'Map' }).tap()
  })

  await test.step('somebody asks; the lead answers with one tap from the map', async () => {
    await eve.goto(routes.callLead())
    await eve.getByRole('button', { name: 'A question' }).tap()
    await eve.getByRole('button', { name: /^Call a lead/ }).tap()
    const hand = await watchHand(lee)
    await lee.getByRole('button', { name: /^I am coming: Eve/ }).tap()
    expect((await hand()).taps).toBeLessThanOrEqual(3)
    await expect(eve.getByRole('heading', { name: 'Lee is coming' })).toBeVisible()
    await eve.getByRole('button', { name: 'It is settled' }).tap()
  })

  await test.step('a hanging limb closes its tree and those in reach', async () => {
    await orchard.must('Di', 'flag_tree', {
      tree: 13,
      kind: 'arborist',
      sign: 'hanging',
      severity: 'danger_now',
      keepOutM: 6,
    })
    await expect(mo.getByText('A 2·1').first()).toBeVisible()
    await holdAs(shared, 'Cy')
    // Cy stood inside the keep-out: told at once, and their tree is begun and theirs no more.
    await expect(shared.getByRole('alertdialog')).toContainText('Come down, leave it')
    await shared.getByRole('button', { name: 'I am out' }).tap()
    await expect(inCrew('Cy')).not.toContainText('A 1·1')
  })

  await test.step('a stop is called from the map, counted to the last person, and ended', async () => {
    await orchard.must('Ann', 'claim_tree', { tree: 6 })
    const annsPhone = await putToSleep(ann)
    const hand = await watchHand(lee)
    await lee.getByRole('link', { name: 'Stop work' }).tap()
    await lee.getByRole('button', { name: 'Stop all work' }).tap()
    expect((await hand()).taps).toBeLessThanOrEqual(3)
    for (const page of [lee, shared, eve])
      await page.getByRole('button', { name: 'I have stopped' }).tap()
    await holdAs(shared, 'Bo')
    await shared.getByRole('button', { name: 'I have stopped' }).tap()
    // A phone that sleeps and somebody without one keep the count open.
    await expect(lee.getByText('2 people are not counted.')).toBeVisible()
    expect(await annsPhone.sees('[role=alertdialog]')).toBe(false)
    await lee.getByRole('button', { name: 'Seen by me: Ann' }).tap()
    await lee.getByRole('button', { name: 'Seen by me: Di' }).tap()
    await lee.getByRole('button', { name: 'Let work go on' }).tap()
    await annsPhone.wake()
    for (const page of [lee, shared, eve, ann])
      await page.getByRole('button', { name: 'I have heard it' }).tap()
    await holdAs(shared, 'Cy')
    await shared.getByRole('button', { name: 'I have heard it' }).tap()
    await lee.goto(routes.person(orchard.idOf('Di')))
    await lee.getByRole('button', { name: 'Di knows that work goes on' }).tap()
    await lee.goto(routes.map())
  })

  await test.step('a break, and a tree left half done', async () => {
    await orchard.must('Bo', 'start_break', {})
    await orchard.must('Bo', 'end_break', {})
    await ann.goto(routes.halfDoneTree(6))
    await ann.getByText('Half', { exact: true }).tap()
    await ann.getByRole('button', { name: 'Leave it half done' }).tap()
    await expect(ann).toHaveURL(routes.nextTree())
    await expect(inCrew('Ann')).not.toContainText('A 1·6')
  })

  await test.step('somebody leaves without telling, and the shift closes with a reason for each', async () => {
    await eve.context().close()
    for (const name of ['Ann', 'Bo', 'Cy', 'Di'] as const) {
      for (const tool of await orchard.toolsOf(name))
        await orchard.must(name, 'return_tool', { tool })
      await orchard.must(name, 'leave', {})
    }
    await orchard.must('Lee', 'leave', {})
    await lee.goto(routes.shift())
    await lee.getByRole('button', { name: 'Close the shift' }).tap()
    const close = lee.getByRole('button', { name: 'Close the shift' })
    await expect(close).toHaveAttribute('aria-disabled', 'true')
    await expect(lee.getByRole('region', { name: '1 person is not counted out' })).toContainText(
      'Eve'
    )
    await lee.getByRole('radio', { name: 'Left without a word, seen going' }).check({ force: true })
    await lee.getByRole('radio', { name: 'Taken home' }).check({ force: true })
    await close.tap()
    await expect(lee.getByRole('heading', { name: 'Shift', level: 1 })).toBeVisible()
  })

  await test.step('the records add up, and every screen says the same', async () => {
    const numbers = lee.getByRole('table')
    await expect(lee.getByText(/^6 people, .+ worked, 2 trees done, 2 half done\.$/)).toBeVisible()
    // Everybody but those whom the lead saw, who answer when they hear that work goes on.
    await expect(lee.getByText(/^Stop from .+ 6 people answered\.$/)).toBeVisible()
    const rowOf = (name: string) => numbers.getByRole('row').filter({ hasText: name })
    // done, begun, helped
    await expect(rowOf('Ann').getByRole('cell').nth(1)).toHaveText('1')
    await expect(rowOf('Ann').getByRole('cell').nth(2)).toHaveText('1')
    await expect(rowOf('Bo').getByRole('cell').nth(1)).toHaveText('1')
    await expect(rowOf('Bo').getByRole('cell').nth(3)).toHaveText('1')
    await expect(rowOf('Cy').getByRole('cell').nth(2)).toHaveText('1')
    await expect(counts).toContainText('2 of 36')
    await lee.goto(routes.board())
    await expect(lee.getByRole('region', { name: 'Varnholt' })).toContainText('2 of 36')
  })
})

/** The screen goes dark in a pocket: nothing of the page runs until it is woken. */
async function putToSleep(page: Page) {
  const session = await page.context().newCDPSession(page)
  await session.send('Debugger.enable')
  await session.send('Debugger.pause')
  return {
    /** Asked of the browser, since the page itself does not answer. */
    sees: async (selector: string) => {
      const { root } = await session.send('DOM.getDocument')
      const { nodeId } = await session.send('DOM.querySelector', { nodeId: root.nodeId, selector })
      return nodeId !== 0
    },
    wake: async () => {
      await session.send('Debugger.disable')
      await session.detach()
    },
  }
}

/** Two people share this phone: it is this one's now. */
async function holdAs(page: Page, name: string): Promise<void> {
  await page.goto(routes.device())
  await page.getByRole('button', { name: `Go on as ${name}` }).tap()
}

async function claim(page: Page, tree: number): Promise<void> {
  await page.goto(`${routes.nextTree()}?tree=${tree}`)
  await page.getByRole('button', { name: 'Claim this tree' }).tap()
  await page.getByRole('button', { name: 'Yes, claim it' }).tap()
  await expect(page).toHaveURL(routes.tree(tree))
}

async function finish(page: Page, tree: number): Promise<void> {
  await page.goto(routes.finishTree(tree))
  await page.getByRole('button', { name: 'Finish tree' }).tap()
  await expect(page.getByText(/ is done\.$/)).toBeVisible()
}

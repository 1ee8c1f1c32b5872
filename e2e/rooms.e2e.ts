import { randomUUID } from 'node:crypto'

import type { Orchard } from './support/orchard'
import { expect, routes, test } from './support/test'

/** Ann's tree is done, everybody has gone home, and the next shift is planned. */
async function endTheDay(orchard: Orchard): Promise<void> {
  const claim = randomUUID()
  await orchard.must('Ann', 'claim_tree', { tree: 1 }, claim)
  await orchard.must('Ann', 'finish_tree', { tree: 1, claim })
  for (const name of ['Ann', 'Bo'] as const) {
    for (const tool of await orchard.toolsOf(name))
      await orchard.must(name, 'return_tool', { tool })
    await orchard.must(name, 'leave', {})
  }
  const { roundId, date, startsAt, endsAt } = await orchard.openShift()
  await orchard.must('Lee', 'leave', {})
  await orchard.must('Lee', 'close_shift', {})
  const hours = { date, startsAt, endsAt, signal: 'horn' } as const
  await orchard.must('Lee', 'schedule_shift', { round: roundId, ...hours })
}

test('a manager begins the next season, finds a tree’s past and who did it, and forgets that person everywhere', async ({
  orchard,
  asPerson,
}) => {
  await endTheDay(orchard)
  const bo = await asPerson('Bo')
  await bo.goto(routes.treeHistory(1))
  await expect(bo.getByText('Finished by Ann')).toBeVisible()
  const mo = await asPerson('Mo', { device: 'desktop' })
  await mo.goto(routes.rooms())
  await mo.getByRole('link', { name: /^Rounds/ }).click()

  await mo.getByRole('button', { name: 'Close the round' }).click()
  await expect(mo.getByRole('dialog')).toContainText('1 shift is planned in this round')
  await mo.getByRole('button', { name: 'Call off 1 shift and close' }).click()
  await expect(mo.getByText('No round is open.')).toBeVisible()
  await mo.getByRole('textbox', { name: 'Season' }).fill('2031')
  await mo.getByRole('button', { name: 'Open the round' }).click()
  await expect(mo.getByRole('region', { name: 'Open now' })).toContainText('2031')
  await expect(mo.getByRole('region', { name: 'Past' })).toContainText('1 tree done')

  await mo.goto(routes.map(1))
  await mo.getByRole('button', { name: 'Its history' }).click()
  const past = mo.getByRole('region', { name: 'Its history' })
  await expect(past).toContainText('Nobody has worked here in this round.')
  await expect(past).toContainText('Finished by Ann')

  await mo.goto(routes.audit({ tree: 1 }))
  await expect(mo.getByText(/^Ann finished A 1·1/)).toBeVisible()

  await mo.goto(routes.person(orchard.idOf('Ann')))
  await mo.getByRole('link', { name: 'Forget this person' }).click()
  await expect(mo.getByText('1 shift,')).toBeVisible()
  await mo.getByRole('button', { name: 'Forget Ann for good' }).click()
  await expect(mo.getByText('Write the name as it stands above: Ann.')).toBeVisible()
  await mo.getByRole('textbox').fill('ann')
  await mo.getByRole('button', { name: 'Forget Ann for good' }).click()

  await expect(mo.getByRole('heading', { name: 'Forgotten.' })).toBeVisible()
  await expect(bo.getByText('Finished by somebody')).toBeVisible()
  await expect(bo.getByText('Ann')).toHaveCount(0)
})

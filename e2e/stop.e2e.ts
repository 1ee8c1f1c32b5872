import { makeReady } from './support/day'
import { findSignal, loseSignal } from './support/phone'
import { expect, routes, test } from './support/test'

test('a stop reaches everybody, is answered person by person, and ends only by a lead', async ({
  orchard,
  asPerson,
}) => {
  await makeReady(orchard, 'Di', 'P3')
  const lee = await asPerson('Lee', { device: 'tablet' })
  const ann = await asPerson('Ann')
  const bo = await asPerson('Bo')
  await lee.goto(routes.map())
  await bo.goto(routes.nextTree())
  await ann.goto(routes.stopWork())

  await ann.getByRole('button', { name: 'Stop all work' }).tap()

  for (const person of [ann, bo, lee])
    await person.getByRole('button', { name: 'I have stopped' }).tap()
  await lee.getByRole('link', { name: 'To the head count' }).tap()
  await expect(lee.getByText('1 person is not counted.')).toBeVisible()
  await lee.getByRole('button', { name: 'Seen by me: Di' }).tap()
  await expect(lee.getByText('seen by Lee')).toBeVisible()
  await lee.getByRole('button', { name: 'Let work go on' }).tap()

  for (const person of [ann, bo, lee])
    await person.getByRole('button', { name: 'I have heard it' }).tap()
  await bo.getByRole('button', { name: 'Claim this tree' }).tap()
  await expect(bo.getByRole('alertdialog')).toHaveCount(0)
  await lee.getByRole('link', { name: 'Map' }).tap()
  await expect(lee).toHaveURL(routes.map())
  await lee.goto(routes.person(orchard.idOf('Di')))
  await lee.getByRole('button', { name: 'Di knows that work goes on' }).tap()
  await expect(lee.getByRole('button', { name: 'Di knows that work goes on' })).toHaveCount(0)
})

test('a phone that sleeps and a person without one keep the count open until a lead has seen both', async ({
  orchard,
  asPerson,
}) => {
  await makeReady(orchard, 'Di', 'P3')
  await orchard.must('Bo', 'claim_tree', { tree: 1 })
  const lee = await asPerson('Lee', { device: 'tablet' })
  const ann = await asPerson('Ann')
  const bo = await asPerson('Bo')
  await bo.goto(routes.tree(1))
  await expect(bo.getByRole('link', { name: 'All steps are done' })).toBeVisible()
  await loseSignal(bo)
  await lee.goto(routes.map())
  await ann.goto(routes.nextTree())

  // Two presses from the map, and the signal stands first.
  await lee.getByRole('link', { name: 'Stop work' }).first().tap()
  await lee.getByRole('button', { name: 'Stop all work' }).tap()
  for (const person of [lee, ann])
    await person.getByRole('button', { name: 'I have stopped' }).tap()

  await expect(lee.getByText('2 people are not counted.')).toBeVisible()
  await expect(lee.getByText(/Three long|Shout: stop work/).first()).toBeVisible()
  await lee.getByRole('button', { name: 'Seen by me: Di' }).tap()
  await expect(lee.getByText('1 person is not counted.')).toBeVisible()
  await lee.getByRole('button', { name: 'Seen by me: Bo' }).tap()
  await expect(lee.getByText('Everybody is counted.')).toBeVisible()
  await lee.getByRole('button', { name: 'Let work go on' }).tap()

  await findSignal(bo)
  await bo.getByRole('button', { name: 'I have heard it' }).tap()
  await expect(bo.getByRole('alertdialog')).toHaveCount(0)
})

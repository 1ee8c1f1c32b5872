import { makeReady } from './support/day'
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
  await expect(lee.getByText('1 person has not answered')).toBeVisible()
  await lee.getByRole('button', { name: 'Di is here' }).tap()
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

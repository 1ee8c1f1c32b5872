import {
  arriveAndConsent,
  briefAsLead,
  checkProtectionAndTake,
  joinBy,
  signBriefing,
} from './support/getting-ready'
import { expect, routes, test } from './support/test'

test.use({ day: 'open' })

test('a newcomer who asks too early hears all that is missing, does each, and is let in', async ({
  orchard,
  asPerson,
  asNewcomer,
}) => {
  await orchard.must('Lee', 'add_tool', { label: 'P7', kind: 'pruner' })
  await orchard.must('Lee', 'mark_big_cuts', { tree: 1 })
  const lee = await asPerson('Lee', { device: 'tablet' })
  const eve = await asNewcomer()
  await joinBy(eve, await orchard.link('Lee', { kind: 'join' }), 'Eve')

  await eve.goto(routes.nextTree())
  const missing = eve.getByRole('list', { name: 'All that is missing' })
  await expect(missing.getByRole('listitem')).toHaveText([
    /not counted in yet/,
    /consent for the season is missing/,
    /briefing is not given to you yet/,
    /briefing is not signed/,
    /protection is not checked/,
    /No tool is in your hand/,
  ])
  await missing.getByRole('link', { name: /not counted in yet/ }).tap()

  await arriveAndConsent(eve)
  await briefAsLead(lee, 'Eve')
  await signBriefing(eve)
  await checkProtectionAndTake(eve, 'P7')

  await eve.getByRole('link', { name: 'Go on without a saw' }).tap()
  await eve.getByRole('button', { name: 'Claim this tree' }).tap()
  await eve.getByRole('button', { name: 'Yes, claim it' }).tap()
  await expect(eve).toHaveURL(routes.tree(1))
})

test('who speaks Spanish joins and gets ready in Spanish', async ({ orchard, asNewcomer }) => {
  await orchard.must('Lee', 'add_tool', { label: 'P7', kind: 'pruner' })
  const eva = await asNewcomer({ language: 'en' })
  await eva.goto(await orchard.link('Lee', { kind: 'join' }))
  await eva.getByText('Español').tap()
  await eva.getByRole('textbox', { name: 'Tu nombre' }).fill('Eva')
  await eva.getByText('Mayor de edad').tap()
  await eva.getByRole('button', { name: 'Unirme a la cuadrilla' }).tap()
  await expect(eva.getByRole('heading', { level: 1 })).toHaveText(/cosas/)
  await eva.getByRole('button', { name: 'Aquí estoy' }).tap()
  await eva.getByRole('link', { name: 'Leer y aceptar' }).tap()
  await eva.getByText('Lo he leído y estoy de acuerdo').tap()
  await eva.getByRole('button', { name: 'Aceptar', exact: true }).tap()
  await expect(eva.getByText('Aceptado para esta temporada')).toBeVisible()
})

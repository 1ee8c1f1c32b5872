import { watchHand } from './support/hand'
import { photoFile } from './support/photo'
import { expect, routes, test } from './support/test'

const hanging = { kind: 'arborist', sign: 'hanging_limb', severity: 'danger_now' } as const

test('a hazard: the neighbour comes out, the lead refers it, the manager clears it', async ({
  orchard,
  asPerson,
}, testInfo) => {
  await orchard.must('Ann', 'claim_tree', { tree: 2 })
  await orchard.must('Bo', 'claim_tree', { tree: 3 })
  const ann = await asPerson('Ann')
  const bo = await asPerson('Bo')
  const lee = await asPerson('Lee', { device: 'tablet' })
  await bo.goto(routes.tree(3))
  await lee.goto(routes.flags())
  await expect(lee.getByRole('heading', { name: 'Nothing is flagged' })).toBeVisible()

  // Ann sees a hanging limb and takes a photo.
  await ann.goto(routes.flagTree(2))
  await ann.getByRole('radio', { name: 'Looks dangerous' }).check({ force: true })
  await ann.getByRole('checkbox', { name: 'Broken limb hanging' }).check({ force: true })
  const chooser = ann.waitForEvent('filechooser')
  await ann.getByRole('button', { name: 'Add a photo' }).tap()
  await (await chooser).setFiles(await photoFile(ann, 800, 600))
  await expect(ann.getByRole('img', { name: 'Photo kept' })).toBeVisible()
  await ann.getByRole('textbox', { name: 'A few words' }).fill('Second limb, cracked at the fork')
  await ann.getByRole('button', { name: 'Flag and close this tree' }).tap()
  await expect(ann.getByRole('heading', { name: 'A 1·2 is closed.' })).toBeVisible()

  // Bo, at the next tree, is told over the whole screen; the lead sees that he has not answered.
  const told = bo.getByRole('alertdialog', { name: 'Come down, leave it' })
  await expect(told).toContainText('Ann flagged a hazard: A 1·2.')
  await expect(told).toContainText('Leave A 1·3 as it is.')
  const card = lee.getByRole('article', { name: 'A 1·2: Broken limb hanging' })
  await expect(card.getByText('was at A 1·3, has not said that they are out')).toBeVisible()
  await expect(card.getByRole('img', { name: 'Photo 1 of A 1·2' })).toBeVisible()
  await expect(card.getByText('Second limb, cracked at the fork')).toBeVisible()
  await told.getByRole('button', { name: 'I am out' }).tap()
  await expect(told).toHaveCount(0)
  await expect(card.getByText('was at A 1·3, is out')).toBeVisible()

  // The lead writes down what is done and has the sheet for the arborist; clearing it is not theirs.
  await expect(card.getByRole('button', { name: /^Clear/ })).toHaveCount(0)
  await card.getByRole('button', { name: 'Write what is done' }).tap()
  const form = lee.getByRole('dialog')
  await form.getByRole('textbox').fill('Rang the arborist, comes on Tuesday')
  await form.getByRole('button', { name: 'Write what is done' }).tap()
  await expect(card.getByText('Rang the arborist, comes on Tuesday')).toBeVisible()
  await expect(lee.getByRole('heading', { name: 'No flag waits for a lead' })).toBeVisible()
  await card.getByRole('link', { name: 'Referral sheet' }).tap()
  await lee.emulateMedia({ media: 'print' })
  const sheet = lee.getByRole('article')
  await expect(sheet).toContainText('Broken limb hanging')
  await expect(sheet).toContainText('Second limb, cracked at the fork')
  await expect(sheet).toContainText(/\d+° \d+\.\d{3}′ north/)
  await expect(sheet.getByRole('img', { name: 'Photo 1' })).toBeVisible()
  await expect(lee.getByRole('button', { name: 'Print' })).toBeHidden()
  await testInfo.attach('referral', { body: await lee.screenshot({ fullPage: true }) })

  // The arborist has been.
  const mo = await asPerson('Mo', { device: 'desktop' })
  await mo.goto(routes.flags())
  await mo.getByRole('button', { name: 'Clear: A 1·2' }).click()
  await mo.getByRole('textbox', { name: 'What was done' }).fill('Limb lowered in three pieces')
  await mo.getByRole('textbox', { name: 'Arborist or company' }).fill('Varnholt Trees')
  await mo.getByRole('dialog').getByRole('button', { name: 'Clear' }).click()
  await expect(mo.getByRole('heading', { name: 'Nothing is flagged' })).toBeVisible()
  await ann.goto(routes.flag())
  await expect(ann.getByText(/^The arborist has been, .* open again\.$/)).toBeVisible()
  await ann.goto(routes.tree(2))
  await expect(ann.getByRole('link', { name: 'Claim this tree' })).toBeVisible()
})

test('a hazard in five taps from the tree in hand, and the arborist reads why', async ({
  orchard,
  asPerson,
}) => {
  await orchard.must('Ann', 'claim_tree', { tree: 2 })
  const ann = await asPerson('Ann')
  await ann.goto(routes.tree(2))
  await expect(ann.getByRole('link', { name: 'Flag', exact: true })).toBeVisible()
  const hand = await watchHand(ann)

  await ann.getByRole('link', { name: 'Flag', exact: true }).tap()
  await ann.getByText('Looks dangerous').tap()
  await ann.getByText('Power line close').tap()
  await ann.getByText('Crack in trunk or fork').tap()
  await ann.getByRole('button', { name: 'Flag and close this tree' }).tap()
  await expect(ann.getByRole('heading', { name: 'A 1·2 is closed.' })).toBeVisible()
  expect((await hand()).taps).toBeLessThanOrEqual(5)

  const lee = await asPerson('Lee', { device: 'tablet' })
  await lee.goto(routes.map(2))
  const panel = lee.getByRole('complementary', { name: 'Tree' })
  await expect(panel.getByText('Crack in trunk or fork', { exact: true })).toBeVisible()
  await lee.goto(routes.flags())
  const card = lee.getByRole('article', { name: 'A 1·2: Power line close' })
  await expect(card.getByText('Crack in trunk or fork', { exact: true })).toBeVisible()
  await card.getByRole('link', { name: 'Referral sheet' }).tap()
  await lee.emulateMedia({ media: 'print' })
  const sheet = lee.getByRole('article')
  await expect(sheet).toContainText('Crack in trunk or fork')
  await expect(sheet).toContainText('29 CFR 1910.269(x) (read in the source)')
})

test('a limb that looks thick: ours by the rules, who decides, and flagged all the same', async ({
  asPerson,
}) => {
  const ann = await asPerson('Ann')
  await ann.goto(routes.flagTree(2, 'limb'))
  await expect(ann.getByText('Until all is answered it is the arborist’s.')).toBeVisible()

  for (const answer of ['Up to 10 cm', 'On the ground'])
    await ann.getByText(answer, { exact: true }).tap()
  await ann.getByText('None of these').tap()
  await ann.getByText('None of these').last().tap()

  await expect(ann.getByText('By the rules it is ours.')).toBeVisible()
  await expect(ann.getByText('Lee decides.')).toBeVisible()
  await ann.getByRole('textbox', { name: /^Measured\?/ }).fill('-3')
  await expect(ann.getByText('Write a number from 0.5 cm to 200 cm.')).toBeVisible()
  await ann.getByRole('textbox', { name: /^Measured\?/ }).fill('12')
  await expect(ann.getByText('Limb too thick: 12 cm, limit 10 cm')).toBeVisible()
  await ann.getByRole('button', { name: 'Flag and close this tree' }).tap()
  await expect(ann.getByRole('heading', { name: 'A 1·2 is closed.' })).toBeVisible()
})

test('a disease: suspected, confirmed as the lead saw it, and another withdrawn with its reason', async ({
  orchard,
  asPerson,
}) => {
  await orchard.must('Ann', 'flag_tree', { tree: 4, kind: 'disease', sign: 'gum', severity: 'low' })
  await orchard.must('Ann', 'flag_tree', {
    tree: 5,
    kind: 'disease',
    sign: 'spots',
    severity: 'low',
  })
  const lee = await asPerson('Lee', { device: 'tablet' })
  await lee.goto(routes.flags())
  await expect(lee.getByRole('heading', { name: '2 flags wait for a lead' })).toBeVisible()

  await lee.getByRole('button', { name: 'Confirm: A 1·4' }).tap()
  const form = lee.getByRole('dialog')
  await form.getByRole('radio', { name: 'Sunken bark, canker' }).check({ force: true })
  await form.getByRole('radio', { name: 'Main limb' }).check({ force: true })
  await form.getByRole('button', { name: 'Confirm' }).tap()
  await expect(lee.getByRole('article', { name: 'A 1·4: Sunken bark, canker' })).toContainText(
    'confirmed'
  )
  await lee.getByRole('button', { name: 'Withdraw: A 1·5' }).tap()
  await form.getByRole('textbox').fill('Lichen, not mould')
  await form.getByRole('button', { name: 'Withdraw' }).tap()
  await expect(lee.getByRole('heading', { name: 'No flag waits for a lead' })).toBeVisible()

  const ann = await asPerson('Ann')
  await ann.goto(routes.flag())
  await expect(ann.getByText('Lee confirmed it.')).toBeVisible()
  await expect(ann.getByText('Lee withdrew it: Lichen, not mould')).toBeVisible()
  await ann.goto(routes.tree(4))
  await expect(ann.getByText('Sunken bark, canker').first()).toBeVisible()
})

test('what a lead types about a flag survives a keep-out that they are in, and a stop', async ({
  orchard,
  asPerson,
}) => {
  await orchard.must('Ann', 'flag_tree', { tree: 4, kind: 'disease', sign: 'gum', severity: 'low' })
  const lee = await asPerson('Lee', { device: 'tablet' })
  await lee.goto(routes.flags())
  await lee.getByRole('button', { name: 'Write what is done: A 1·4' }).tap()
  const words = lee.getByRole('dialog').getByRole('textbox')
  await words.fill('Look again on Fri')

  await orchard.must('Bo', 'stop_work', {})
  await lee.getByRole('button', { name: 'I have stopped' }).tap()
  await expect(words).toHaveValue('Look again on Fri')

  await orchard.must('Bo', 'flag_tree', { tree: 9, ...hanging })
  await expect(lee.getByRole('article', { name: 'A 1·9: Broken limb hanging' })).toBeAttached()
  await expect(words).toHaveValue('Look again on Fri')
})

test('house rules are the manager’s; the line at the tree follows them', async ({
  orchard,
  asPerson,
}) => {
  await orchard.must('Ann', 'claim_tree', { tree: 1 })
  const mo = await asPerson('Mo', { device: 'desktop' })
  const lee = await asPerson('Lee', { device: 'tablet' })
  const ann = await asPerson('Ann')
  await ann.goto(routes.tree(1))
  await expect(ann.getByText('Limb thicker than 10 cm? Not yours: refer.')).toBeVisible()

  await mo.goto(routes.houseRules())
  const limb = mo.getByRole('textbox', { name: 'A limb is the arborist’s above (cm)' })
  await limb.fill('12')
  await expect(mo.getByText('Write a number from 2 cm to 10 cm.')).toBeVisible()
  await limb.fill('8')
  await mo.getByRole('button', { name: 'Save the house rules' }).click()
  await expect(mo.getByText('Saved. Every phone has them now.')).toBeVisible()

  await expect(ann.getByText('Limb thicker than 8 cm? Not yours: refer.')).toBeVisible()
  await lee.goto(routes.houseRules())
  await expect(
    lee.getByRole('heading', { name: 'A limb is the arborist’s above: 8 cm' })
  ).toBeVisible()
  await expect(lee.getByRole('button', { name: 'Save the house rules' })).toHaveCount(0)
})

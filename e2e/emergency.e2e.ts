import { loseSignal } from './support/phone'
import { expect, type Page, routes, test } from './support/test'
import { walks } from './support/walks'

const inside = walks.filter(({ who }) => who !== null)

for (const { of, who, device, screens } of inside) {
  test(`the emergency card is one press from every screen of ${of}, without signal`, async ({
    orchard,
    asPerson,
  }) => {
    const paths = (await screens(orchard)).map((screen) =>
      typeof screen === 'string' ? screen : screen.path
    )
    const page = await asPerson(who ?? 'Ann', { device })
    await page.goto(paths[0] ?? routes.home())
    await loseSignal(page)

    for (const path of new Set(paths)) {
      await goInside(page, path)
      await openCard(page, path)
      await expect(page.getByRole('link', { name: 'Call 112' }).first(), path).toBeVisible()
    }
  })
}

/** As a link in the page goes there: nothing is asked of the server. */
async function goInside(page: Page, path: string): Promise<void> {
  await page.evaluate((to) => history.pushState(null, '', to), path)
  await expect(page.getByRole('heading', { level: 1 }).first()).toBeVisible()
}

/** One press: on what lies over the whole screen (a stop), else on the screen itself. */
async function openCard(page: Page, path: string): Promise<void> {
  const over = page.getByRole('alertdialog')
  if (await over.isVisible()) {
    const card = over.getByRole('button', { name: 'Emergency', exact: true })
    if ((await card.getAttribute('aria-expanded')) === 'false') await card.click()
  } else if (path !== routes.emergency()) {
    await page.getByRole('link', { name: 'Emergency', exact: true }).first().click()
    await expect(page.getByRole('heading', { name: 'Emergency' }), path).toBeVisible()
  }
}

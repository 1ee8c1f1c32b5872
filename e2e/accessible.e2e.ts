import { expectAxeClean, expectNoSidewaysScroll, expectTargetsOf } from './support/accessible'
import { walks } from './support/screens'
import { expect, test } from './support/test'

/** For a gloved thumb, and for a mouse. */
const leastPx = { phone: 56, tablet: 56, desktop: 44 }

for (const { of, who, device, screens } of walks) {
  test(`every screen of ${of} can be used by everybody, in light and in dark`, async ({
    orchard,
    asPerson,
    asNewcomer,
  }) => {
    const paths = await screens(orchard)
    const page = who === null ? await asNewcomer({ device }) : await asPerson(who, { device })

    for (const path of paths) {
      // A fragment alone would not load the page anew.
      await page.goto('about:blank')
      await page.goto(path)
      await expect(page.getByRole('heading', { level: 1 }).first()).toBeVisible()
      await expectAxeClean(page)
      await expectTargetsOf(page, leastPx[device])
      await expectNoSidewaysScroll(page)
    }
  })
}

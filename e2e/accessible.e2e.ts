import { expectAxeClean, expectNoSidewaysScroll, expectTargetsOf } from './support/accessible'
import { test } from './support/test'
import { openScreen, walks } from './support/walks'

/** For a gloved thumb, and for a mouse. */
const leastPx = { phone: 56, tablet: 56, desktop: 44 }

for (const { of, who, device, screens } of walks) {
  test(`every screen of ${of} can be used by everybody, in light and in dark`, async ({
    orchard,
    asPerson,
    asNewcomer,
  }) => {
    const page = who === null ? await asNewcomer({ device }) : await asPerson(who, { device })

    for (const screen of await screens(orchard)) {
      await openScreen(page, screen, 'en')
      await expectAxeClean(page)
      await expectTargetsOf(page, leastPx[device])
      await expectNoSidewaysScroll(page)
    }
  })
}

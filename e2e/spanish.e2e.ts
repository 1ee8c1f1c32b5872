import { englishOn } from './support/english-words'
import { expect, test } from './support/test'
import { openScreen, walks } from './support/walks'

for (const { of, who, device, screens } of walks) {
  test(`no English word is on a Spanish screen of ${of}`, async ({
    orchard,
    asPerson,
    asNewcomer,
  }) => {
    const held = { device, language: 'es' } as const
    const page = who === null ? await asNewcomer(held) : await asPerson(who, held)

    for (const screen of await screens(orchard)) {
      await openScreen(page, screen, 'es')
      await expect(page.locator('html')).toHaveAttribute('lang', 'es')
      expect.soft(await englishOn(page), JSON.stringify(screen)).toEqual([])
    }
  })
}

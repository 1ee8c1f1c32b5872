import { englishOn } from './support/english-words'
import { walks } from './support/screens'
import { expect, test } from './support/test'

for (const { of, who, device, screens } of walks) {
  test(`no English word is on a Spanish screen of ${of}`, async ({
    orchard,
    asPerson,
    asNewcomer,
  }) => {
    const paths = await screens(orchard)
    const held = { device, language: 'es' } as const
    const page = who === null ? await asNewcomer(held) : await asPerson(who, held)

    for (const path of paths) {
      await page.goto('about:blank')
      await page.goto(path)
      await expect(page.getByRole('heading', { level: 1 }).first()).toBeVisible()
      await expect(page.locator('html')).toHaveAttribute('lang', 'es')
      expect.soft(await englishOn(page), path).toEqual([])
    }
  })
}

import { expect, type Page, routes, test } from './support/test'

test('with keys alone from the next tree to a claimed one to a finished one', async ({
  asPerson,
}) => {
  const ann = await asPerson('Ann', { device: 'desktop' })
  await ann.goto(routes.nextTree())
  await expect(ann.getByRole('button', { name: 'Claim this tree' })).toBeVisible()

  await tabTo(ann, 'button', 'Claim this tree')
  await ann.keyboard.press('Enter')
  await expect(ann.getByRole('heading', { level: 1 })).toHaveText(/Is it this one/)
  await tabTo(ann, 'button', 'Yes, claim it')
  await ann.keyboard.press('Space')
  await expect(ann).toHaveURL(routes.tree(1))
  await tabTo(ann, 'link', 'All steps are done')
  await ann.keyboard.press('Enter')
  await expect(ann).toHaveURL(routes.finishTree(1))
  await tabTo(ann, 'button', 'Finish tree')
  await ann.keyboard.press('Enter')

  await expect(ann.getByText('A 1·1 is done.')).toBeVisible()
})

const mostStops = 60

/** Each stop on the way shows where it is. */
async function tabTo(page: Page, role: 'button' | 'link', name: string): Promise<void> {
  const wanted = page.getByRole(role, { name })
  await expect(wanted).toBeVisible()
  for (let stops = 0; stops < mostStops; stops++) {
    await page.keyboard.press('Tab')
    expect(await page.evaluate(focusIsSeen), `focus is seen on the way to ${name}`).toBe(true)
    if (await wanted.evaluate((element) => element === document.activeElement)) return
  }
  throw new Error(`${name} is not reached in ${mostStops} stops.`)
}

/** A painted choice shows the focus of the hidden field inside it. */
function focusIsSeen(): boolean {
  const at = document.activeElement
  if (!at || at === document.body) return true
  const shown = [at, at.nextElementSibling, at.closest('label')]
  return shown.some((element) => {
    if (!element) return false
    const { outlineStyle, boxShadow } = getComputedStyle(element)
    return outlineStyle !== 'none' || boxShadow !== 'none'
  })
}

/** What somebody does on their own phone between the link of the shift and the first tree. */

import { expect, type Page, routes } from './test'

export async function joinBy(page: Page, link: string, name: string): Promise<void> {
  await page.goto(link)
  await page.getByRole('textbox', { name: 'Your name' }).fill(name)
  await page.getByText('Adult', { exact: true }).tap()
  await page.getByRole('button', { name: 'Join the crew' }).tap()
  await expect(page).toHaveURL(routes.ready())
}

export async function arriveAndConsent(page: Page): Promise<void> {
  await page.getByRole('button', { name: 'I am here' }).tap()
  await page.getByRole('link', { name: 'Read and agree' }).tap()
  // Who presses too early is led to what is asked of them.
  await page.getByRole('button', { name: 'Agree', exact: true }).tap({ force: true })
  await expect(page.getByRole('checkbox', { name: 'I have read this and agree' })).toBeFocused()
  await page.getByText('I have read this and agree').tap()
  await page.getByRole('button', { name: 'Agree', exact: true }).tap()
}

/** A lead briefs whoever is ticked, by name. */
export async function briefAsLead(lead: Page, name: string): Promise<void> {
  await lead.goto(routes.giveBriefing())
  const box = lead.getByRole('checkbox', { name: new RegExp(`^${name}\\b`) })
  await box.check({ force: true })
  // Whoever arrived since is ticked already.
  await lead.getByRole('button', { name: /^I briefed/ }).tap()
}

/** Of two topics, as orchards begin. */
export async function signBriefing(page: Page): Promise<void> {
  await page.getByRole('link', { name: 'Open the briefing' }).tap()
  await page.getByRole('button', { name: 'Next topic' }).tap()
  await page.getByText('I heard it').tap()
  await page.getByRole('button', { name: 'Sign the briefing' }).tap()
}

export async function checkProtectionAndTake(page: Page, tool: string): Promise<void> {
  await page.getByRole('link', { name: 'Check protection' }).tap()
  const looks = page.getByRole('radio', { name: 'In order' })
  await expect(looks).toHaveCount(5)
  for (const look of await looks.all()) await look.check({ force: true })
  await page.getByRole('button', { name: 'Protection is in order' }).tap()
  await page.getByText(tool, { exact: true }).tap()
  await looks.check({ force: true })
  await page.getByRole('button', { name: `Take ${tool}` }).tap()
}

import { afterAll, beforeAll, expect, test } from 'vitest'

import type { State } from '../../lib/events/state'
import { quarrelsIn } from '../../supabase/seed/crew-checks'
import { runCrew } from '../../supabase/seed/crew-run'
import { loadDemo } from '../../supabase/seed/demo'
import { linksAtStart } from '../../supabase/seed/links'
import { backendAt } from '../../supabase/seed/public-client'
import { openHosted } from '../supabase/seed/hosted'

let hosted: Awaited<ReturnType<typeof openHosted>>
beforeAll(async () => {
  hosted = await openHosted()
  await loadDemo(hosted.engine, new Date(), { lastWinter: false })
}, 60_000)
afterAll(() => hosted.close())

async function managersLink(): Promise<string> {
  const links = await linksAtStart(hosted.engine)
  return `${hosted.origin}${links.find(({ seat }) => seat === 'manager')?.path}`
}

test('a simulated crew works the demo, and everything that must be true is', async () => {
  const run = { people: 5, seed: 4, minutes: 5, steps: 24, paceMs: 5 }
  const said: string[] = []

  const link = await managersLink()
  const checks = await runCrew(await backendAt(hosted.origin), { ...run, link }, (line) =>
    said.push(line)
  )

  expect(checks.filter(({ wrong }) => wrong.length > 0)).toEqual([])
  expect(checks.length).toBeGreaterThan(7)
  // Proofs on an idle crew would be empty.
  const day = said.join('\n')
  for (const happened of ['arrived', 'finished tree', 'lost the signal', 'has signal again'])
    expect(day).toContain(happened)
  const [left] = await hosted.engine.query<{ count: number }>(
    `select count(*)::integer from public.visits v
     join public.command_answers a on a.command_id = v.id and not a.answer ? 'refused'
     where a.name in ('finish_tree', 'release_tree')`
  )
  const [visits] = await hosted.engine.query<{ count: number }>(
    'select count(*)::integer from public.visits'
  )
  expect(left?.count).toBe(visits?.count)
}, 120_000)

test('the watch notices two claims on a tree and one person at two trees', () => {
  const claim = { tree: 7, people: { ann: 'holder' } }
  const claims = { one: claim, two: { ...claim, people: { bo: 'holder' } } }

  expect(quarrelsIn({ head: 3, claims } as unknown as State)).toEqual([
    'at 3 tree 7 has two claims',
  ])
  const both = { one: claim, two: { ...claim, tree: 8 } }
  expect(quarrelsIn({ head: 4, claims: both } as unknown as State)).toEqual([
    'at 4 ann is at two trees',
  ])
})

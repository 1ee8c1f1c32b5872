import { spawn } from 'node:child_process'
import { mkdtempSync, statSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, beforeAll, expect, test } from 'vitest'

import { root } from '../../../supabase/local/root'
import { setUpLink } from '../../../supabase/seed/links'
import { keepLinks, keptLink } from '../../../supabase/seed/links-file'
import { backendAt, signIn } from '../../../supabase/seed/public-client'
import { openHosted } from './hosted'

let hosted: Awaited<ReturnType<typeof openHosted>>
beforeAll(async () => {
  hosted = await openHosted()
}, 60_000)
afterAll(() => hosted.close())

/** As somebody at a terminal. */
function runScript(script: string, words: string[]): Promise<{ code: number; said: string }> {
  const program = join(root, 'node_modules/.bin/tsx')
  const child = spawn(program, [join(root, 'supabase/seed', script), ...words], { cwd: root })
  let said = ''
  for (const out of [child.stdout, child.stderr])
    out.on('data', (text) => {
      said += text
    })
  return new Promise((resolve) => child.on('close', (code) => resolve({ code: code ?? -1, said })))
}

test('the backend is found on a page, and a script signs in there', async () => {
  const client = await signIn(await backendAt(`${hosted.origin}/join#anything`))

  expect(await client.call({ name: 'my_orchards', values: {}, limitMs: 5000 })).toEqual({
    ok: true,
    value: [],
  })
  await client.close()
})

test('somebody at a terminal brings the demo’s own file into a new orchard', async () => {
  const { path } = await setUpLink(hosted.engine)
  const file = join(root, 'supabase/seed/orchard.csv')
  const founding = ['--name', 'Tres Pozos', '--manager', 'Ana', '--time-zone', 'Europe/Madrid']

  const words = [file, '--link', `${hosted.origin}${path}`, ...founding, '--language', 'es']
  const { code, said } = await runScript('bring-in.ts', words)

  expect(said).toMatch(/^Han entrado 397 árboles en 3 bloques/)
  expect(code).toBe(0)
  expect(
    await hosted.engine.query('select name, language, time_zone from public.orchards')
  ).toEqual([{ name: 'Tres Pozos', language: 'es', time_zone: 'Europe/Madrid' }])
}, 60_000)

test('a bad file ends with 1, a wrong word with 2', async () => {
  const file = join(mkdtempSync(join(tmpdir(), 'rowcall-')), 'trees.csv')
  writeFileSync(file, 'block,row\nA,1\n')

  expect(
    (await runScript('bring-in.ts', [file, '--link', 'http://orchard.test/join#x'])).code
  ).toBe(1)
  expect((await runScript('bring-in.ts', [file, '--lnik', 'x'])).code).toBe(2)
}, 60_000)

test('the host’s links are kept for their owner only', () => {
  const folder = mkdtempSync(join(tmpdir(), 'rowcall-links-'))
  keepLinks(folder, 'http://orchard.test', [{ seat: 'manager', path: '/join#code' }])

  expect(statSync(join(folder, 'links.json')).mode & 0o777).toBe(0o600)
  expect(keptLink(folder, 'manager')).toBe('http://orchard.test/join#code')
  expect(keptLink(folder, 'lead')).toBeNull()
  expect(keptLink(join(folder, 'nowhere'), 'manager')).toBeNull()
})

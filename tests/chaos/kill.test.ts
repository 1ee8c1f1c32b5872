import { type ChildProcess, fork } from 'node:child_process'
import { randomUUID } from 'node:crypto'
import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, expect, test } from 'vitest'
import { makeTokens } from '../../supabase/local/http/tokens'
import { openData } from '../../supabase/local/keep/open-data'
import { fixtures } from '../supabase/local/fixtures'

const rounds = 10
const callers = 20
const dataFolder = mkdtempSync(join(tmpdir(), 'rowcall-kill-'))
const secret = Buffer.alloc(32, 3)
afterAll(() => rmSync(dataFolder, { recursive: true, force: true }))

test('killed under load ten times, it opens again each time and has all that it acknowledged', async () => {
  const userId = await makeUser()
  const acknowledged = new Set<string>()

  for (let round = 0; round < rounds; round += 1) {
    const { child, port } = await startHost()
    const before = acknowledged.size
    const load = Promise.all(
      Array.from({ length: callers }, () => writeUntilRefused(port, userId, acknowledged))
    )
    const enough = before + 40 + Math.floor(Math.random() * 200)
    await expect
      .poll(() => acknowledged.size, { interval: 1, timeout: 60_000 })
      .toBeGreaterThan(enough)
    child.kill('SIGKILL')
    await load
  }

  const { engine, close } = await openData({ dataFolder, databaseUrl: null, migrations: fixtures })
  const rows = await engine.query<{ words: string }>('select words from notes')
  await close()
  const kept = new Set(rows.map(({ words }) => words))
  expect([...acknowledged].filter((words) => !kept.has(words))).toEqual([])
  expect(rows.length - acknowledged.size).toBeLessThanOrEqual(rounds * callers)
}, 300_000)

async function makeUser(): Promise<string> {
  const { engine, close } = await openData({ dataFolder, databaseUrl: null, migrations: fixtures })
  const [user] = await engine.query<{ id: string }>(
    'insert into auth.users default values returning id'
  )
  await close()
  return user?.id ?? ''
}

async function startHost(): Promise<{ child: ChildProcess; port: number }> {
  const child = fork(
    new URL('./host-to-kill.ts', import.meta.url),
    [dataFolder, secret.toString('hex')],
    { execArgv: ['--import', 'tsx'] }
  )
  const port = await new Promise<number>((resolve, reject) => {
    child.once('message', (message) => resolve(Number(message)))
    child.once('exit', (code) => reject(new Error(`The host ended with ${code}.`)))
  })
  return { child, port }
}

async function writeUntilRefused(port: number, userId: string, acknowledged: Set<string>) {
  const tokens = await makeTokens(secret)
  const token = await tokens.signAccess({ userId, sessionId: randomUUID() })
  const headers = { apikey: tokens.anonKey, authorization: `Bearer ${token}` }
  for (;;) {
    const words = randomUUID()
    try {
      const answer = await fetch(`http://127.0.0.1:${port}/rest/v1/rpc/add_note`, {
        method: 'POST',
        body: JSON.stringify({ p_words: words }),
        headers,
      })
      if (answer.status === 200) acknowledged.add(words)
    } catch {
      return
    }
  }
}

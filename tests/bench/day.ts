/** Forty simulated people work for twenty minutes against one host: what must be true at the end, and the host's memory. */

import { mkdirSync, readdirSync } from 'node:fs'
import { join } from 'node:path'

import { startHost } from '../../e2e/support/host'
import { makeSetUpCodes } from '../../e2e/support/set-up-codes'
import { hashOfCode, newCode } from '../../supabase/seed/codes'
import { runCrew } from '../../supabase/seed/crew-run'
import { backendAt } from '../../supabase/seed/public-client'
import { atMost, type Figure, MB, noted } from './figures'
import { residentBytes } from './memory'
import { foundOrchard } from './orchard'
import { Phone } from './phone'

const people = 40
const minutes = 20
/** A tree that takes half an hour passes in some ten seconds. */
const paceMs = 2_000
const everyMs = 5_000

export async function benchDay(folder: string): Promise<Figure[]> {
  mkdirSync(folder)
  const dataFolder = join(folder, 'data')
  await makeSetUpCodes(dataFolder, join(folder, 'codes'))
  const [code = ''] = readdirSync(join(folder, 'codes'))
  const host = await startHost({ dataFolder, logFile: join(folder, 'host.log') })
  const memory: number[] = []
  const reading = setInterval(() => memory.push(residentBytes(host.processId)), everyMs)
  try {
    const backend = await backendAt(host.address)
    const { manager } = await foundOrchard(
      await Phone.signUp(host.address, backend.anonKey ?? ''),
      code,
      10_000
    )
    const secret = newCode()
    await manager.must('make_invite', {
      p_kind: 'device',
      p_subject: manager.person,
      p_code_hash: hashOfCode(secret),
    })
    const link = `${host.address}/join#${secret}`
    const counted = { steps: 0 }
    const checks = await runCrew(backend, { link, people, seed: 1, minutes, paceMs }, () => {
      counted.steps += 1
    })
    const wrong = checks.filter((check) => check.wrong.length > 0)
    return [
      noted(`what ${people} people did in ${minutes} minutes`, `${counted.steps} steps`),
      ...wrong.map(({ claim, wrong: [first = ''] }) => noted(`NOT TRUE: ${claim}`, first)),
      atMost('of what must be true at the end, not true', wrong.length, 0, String),
      ...growth(memory),
    ]
  } finally {
    clearInterval(reading)
    await host.stop()
  }
}

/** After the first quarter caches are full; from there on it should be level. */
function growth(memory: readonly number[]): Figure[] {
  if (process.platform !== 'linux') return [noted('memory', 'read on Linux only')]
  const quarter = Math.floor(memory.length / 4)
  const early = mean(memory.slice(quarter, 2 * quarter))
  const late = mean(memory.slice(-quarter))
  return [
    noted('memory of the host in the second quarter', MB(early)),
    noted('memory of the host in the last quarter', MB(late)),
    atMost('last quarter by second quarter', late / early, 1.15, (value) => value.toFixed(2)),
  ]
}

function mean(values: readonly number[]): number {
  return values.reduce((sum, value) => sum + value, 0) / values.length
}

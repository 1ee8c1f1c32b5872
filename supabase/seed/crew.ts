/** `npm run demo:crew`: simulated people at work in the open shift, and a check that nothing went wrong. */

import { parseArgs } from 'node:util'

import { readSettings } from '../local/settings'
import { runCrew } from './crew-run'
import { crewNames } from './crew-setup'
import { keptLink } from './links-file'
import { backendAt } from './public-client'

const usage = `A dozen simulated people work the open shift through the public client.

  npm run demo:crew
  npm run demo:crew -- --people 12 --minutes 3 --seed 7

  --link     a manager's link. Without it, the one that npm start left on this machine (links.json in the
             data directory, readable by its owner only; ROWCALL_DATA says where)
  --server   where Rowcall runs, if not where the link points
  --people   1 to 40, 12 if not said
  --minutes  how long they work, 2 if not said
  --seed     the same number makes the same choices
  --pace     milliseconds between two things that a person does, 900 if not said
  --quiet    only the check at the end

They make mistakes, lose signal, send late and send twice. The people stay in the orchard and are met again
by the next run. Ends with 0 when everything that must be true is true, else with 1.`

const options = {
  link: { type: 'string' },
  server: { type: 'string' },
  people: { type: 'string', default: '12' },
  minutes: { type: 'string', default: '2' },
  seed: { type: 'string', default: '1' },
  pace: { type: 'string', default: '900' },
  quiet: { type: 'boolean', default: false },
  help: { type: 'boolean', default: false },
} as const

const code = await run().catch((error) => {
  print(error instanceof Error ? error.message : String(error))
  return 1
})
// The client library's sockets would keep Node awake for ten seconds more.
process.stdout.write('', () => process.exit(code))

async function run(): Promise<number> {
  const { values } = parseArgs({ options })
  if (values.help) {
    print(usage)
    return 0
  }
  const link = values.link ?? keptLink(readSettings().dataFolder, 'manager')
  if (!link) throw new Error('No manager’s link. Start the demo with npm start, or give --link.')
  const checks = await runCrew(
    await backendAt(values.server ?? link),
    {
      link,
      people: numberOf('people', 1, crewNames.length),
      minutes: numberOf('minutes', 0.05, 600),
      seed: numberOf('seed', 0, 1_000_000),
      paceMs: numberOf('pace', 0, 60_000),
    },
    values.quiet ? () => {} : print
  )
  print('')
  for (const { claim, wrong } of checks) {
    print(`${wrong.length === 0 ? 'true ' : 'FALSE'}  ${claim}`)
    for (const one of wrong.slice(0, 20)) print(`         ${one}`)
  }
  return checks.every(({ wrong }) => wrong.length === 0) ? 0 : 1

  function numberOf(name: 'people' | 'minutes' | 'seed' | 'pace', least: number, most: number) {
    const number = Number(values[name])
    if (number >= least && number <= most) return number
    throw new Error(`--${name} is a number from ${least} to ${most}.`)
  }
}

function print(line: string): void {
  process.stdout.write(`${line}\n`)
}

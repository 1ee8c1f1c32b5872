/** Asks the referee while somebody waits. Never kept: a claim that comes in later is nobody's wish any more. */

import type { Answer, Outcome } from '@/lib/events/answer'
import type { Command } from '@/lib/events/commands'

import { waitMs } from './backoff'
import { answerLimitMs, inventoryLimitMs } from './limits'
import type { Clock, Random, Server } from './ports'

type AskParts = {
  server: Server
  clock: Clock
  random: Random
  /** What was done before and is not sent yet: the referee has to know it first. */
  sentBefore?: () => Promise<void>
}

/** An answer that was lost is fetched with the same id, as long as there is time. */
export async function ask(
  { server, clock, random, sentBefore }: AskParts,
  command: Command
): Promise<Outcome<Answer>> {
  const limitMs = bringsIn(command) ? inventoryLimitMs : answerLimitMs
  const until = clock.now() + limitMs
  if (sentBefore && !(await inTime(sentBefore(), clock))) return { ok: false, fault: 'offline' }

  for (let tries = 0; ; tries++) {
    const outcome = await server.send(command, until - clock.now())
    if (outcome.ok || (outcome.fault !== 'offline' && outcome.fault !== 'busy')) return outcome

    const pauseMs = waitMs(tries, random.share()) / 2
    if (clock.now() + pauseMs >= until) return { ok: false, fault: 'offline' }
    await new Promise<void>((resume) => clock.after(pauseMs, resume))
  }
}

function inTime(done: Promise<void>, clock: Clock): Promise<boolean> {
  return new Promise((resolve) => {
    const callOff = clock.after(answerLimitMs, () => resolve(false))
    void done.then(() => {
      callOff()
      resolve(true)
    })
  })
}

/** Thousands of trees, or a whole orchard. */
function bringsIn({ name }: Command): boolean {
  return name === 'bring_in_trees' || name === 'bring_in_orchard'
}

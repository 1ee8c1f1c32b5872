/** One simulated person: what they do next, as chance and the rules have it. */

import { claimOf } from '@/lib/events/look-ups'
import type { Claim } from '@/lib/events/state'

import { atTree } from './crew-at-tree'
import { betweenTrees } from './crew-between'
import { atBrush } from './crew-brush'
import { lookForSignal } from './crew-no-signal'
import type { CrewPhone } from './crew-phone'
import { getReady } from './crew-ready'
import type { Random } from './random'
import type { Land } from './trees-to-take'

export type Sim = {
  phone: CrewPhone
  random: Random
  land: Land
  manager: CrewPhone
  others: readonly CrewPhone[]
  /** The tree they stand at. */
  at: number | null
  /** So many steps until there is signal again. */
  noSignalFor: number
  /** Claims they have put down, whether or not the referee knows yet. */
  putDown: Set<string>
  anyTree: () => number | null
  /** What should never happen, in words. */
  complaints: string[]
}

export type Held = Claim & { id: string }

/** What they did, to be printed. */
export async function act(sim: Sim): Promise<string> {
  const { phone, random } = sim
  if (!phone.hasSignal()) return lookForSignal(sim)
  if (random.percent(7)) {
    phone.loseSignal()
    sim.noSignalFor = 2 + Math.floor(random.share() * 4)
    return 'lost the signal'
  }
  if (random.percent(5)) phone.loseNextAnswer()
  if (random.percent(8)) return sendAgain(sim)

  await phone.hear()
  const held = holding(sim)
  if (held) return held.row ? atBrush(sim, held) : atTree(sim, held)
  const helping = claimOf(phone.state(), phone.seat.personId)
  if (helping) {
    if (sim.putDown.has(helping.id) || random.percent(60)) return 'helps'
    await phone.keep('leave_tree', { claim: helping.id })
    return `stopped helping at tree ${helping.tree}`
  }
  return (await getReady(sim)) ?? betweenTrees(sim)
}

/** The tree or the row of brush in hand, as far as this phone knows. */
export function holding({ phone, putDown }: Sim): Held | null {
  const { personId } = phone.seat
  const claim = claimOf(phone.state(), personId)
  const isMine = claim?.people[personId] === 'holder' && !putDown.has(claim.id)
  return isMine ? claim : null
}

/** A tap that comes twice, much later. The referee gives the first answer and changes nothing. */
async function sendAgain({ phone, random, complaints }: Sim): Promise<string> {
  const before = random.pick(phone.sent)
  if (!before) return 'waits'
  const outcome = await before.again()
  if (outcome.ok && JSON.stringify(outcome.value) !== JSON.stringify(before.answer))
    complaints.push(`${before.name} sent again got another answer: ${JSON.stringify(outcome)}`)
  return `sent ${before.name} again`
}

/** A simulated person with a tree in hand. */

import { missingOfPerson } from '@/lib/events/missing'

import type { Held, Sim } from './crew-person'
import { tinyJpeg } from './tiny-jpeg'

const soon = { at: null, begunAt: null, elapsedS: null }

export async function atTree(sim: Sim, held: Held): Promise<string> {
  const { phone, random, putDown } = sim
  const { id: claim } = held
  const tree = held.tree ?? 0
  const dice = random.share() * 100

  if (dice < 45) {
    putDown.add(claim)
    await phone.keep('finish_tree', { ...soon, claim, tree })
    return `finished tree ${tree}`
  }
  if (dice < 55) {
    const share = 10 + Math.floor(random.share() * 80)
    putDown.add(claim)
    await phone.keep('release_tree', { ...soon, claim, tree, share, note: 'The top is left.' })
    return `left tree ${tree} half done`
  }
  if (dice < 58) {
    putDown.add(claim)
    await phone.keep('release_tree', { ...soon, claim, tree, share: null })
    return `left tree ${tree} as it was`
  }
  if (dice < 66) return handOver(sim, claim, tree)
  if (dice < 72) {
    await phone.keep('flag_tree', { tree, kind: 'disease', sign: 'gum', severity: 'low' })
    await addPhoto(sim, tree)
    return `flagged tree ${tree} for disease, with a photo`
  }
  if (dice < 73) {
    putDown.add(claim)
    const hazard = { kind: 'arborist', sign: 'crack', severity: 'high', keepOutM: 4 } as const
    await phone.keep('flag_tree', { ...hazard, tree, share: 30 })
    return `flagged tree ${tree} for an arborist`
  }
  if (dice < 78) {
    putDown.add(claim)
    // Two taps are two commands to the phone; the second finds the work done.
    await phone.keep('finish_tree', { ...soon, claim, tree })
    await phone.keep('finish_tree', { ...soon, claim, tree })
    return `finished tree ${tree} with two taps`
  }
  return `works at tree ${tree}`
}

async function handOver(sim: Sim, claim: string, tree: number): Promise<string> {
  const { phone, random, others } = sim
  const ready = others.filter(
    ({ seat }) => missingOfPerson(phone.state(), seat.personId).length === 0
  )
  const to = random.pick(ready)
  if (!to) return `works at tree ${tree}`
  await phone.ask('hand_over', { claim, to: to.seat.personId })
  return `wants to hand tree ${tree} over to ${to.name}`
}

async function addPhoto({ phone, random }: Sim, tree: number): Promise<void> {
  const jpeg = tinyJpeg(Math.floor(random.share() * 64)).toString('base64')
  await phone.keep('add_photo', { tree, purpose: 'flag', jpeg })
}

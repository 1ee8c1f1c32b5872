/** The simulated crew comes in: people by the manager's hand, each with a phone of their own. */

import type { BackendAddress } from '@/lib/data/client'
import { sheetOf } from '@/lib/data/sheet'
import { openShift } from '@/lib/events/look-ups'
import type { Skill, State } from '@/lib/events/state'

import { hashOfCode, newCode } from './codes'
import { type CrewPhone, openCrewPhone } from './crew-phone'
import { signIn } from './public-client'
import { type Random, randomFrom } from './random'
import { mustRead, mustSend, type Seat } from './referee'
import { type Land, landOf } from './trees-to-take'
import { redeem, wayInOf } from './way-in'

/** Invented. The first is asked for first, so that a second run meets the same people. */
export const crewNames = [
  ...['Aksel Brand', 'Bibiana Soto', 'Corin Whitlow', 'Delia Arce', 'Edvin Mokoena', 'Fenna Vos'],
  ...['Gaspar Lindo', 'Halina Pryce', 'Ignacio Rey', 'Jorun Tate', 'Keziah Barlow', 'Lope Arana'],
  ...['Mabli Quist', 'Nicanor Vega', 'Oona Farrow', 'Petra Ilves', 'Quirino Sanz', 'Runa Askew'],
  ...['Silas Dunmore', 'Tirza Okafor', 'Ulises Pardo', 'Viggo Hale', 'Wenna Croft', 'Ximena Luz'],
  ...['Yorick Tamm', 'Zuleika Bask', 'Anselm Roque', 'Brona Keats', 'Calixto Mena', 'Dagny Frost'],
  ...['Eulalia Pons', 'Fabian Orme', 'Greta Nilo', 'Hector Lund', 'Imara Swale', 'Joaquim Teel'],
  ...['Katya Morrow', 'Leandro Cruz', 'Maren Holt', 'Nestor Abril'],
]

export type Crew = {
  manager: CrewPhone
  phones: readonly CrewPhone[]
  land: Land
  close: () => Promise<void>
}

export async function gatherCrew(
  backend: BackendAddress,
  link: string,
  { people, seed, each }: { people: number; seed: number; each: (state: State) => void }
): Promise<Crew> {
  const manager = await comeIn(backend, 'the manager', wayInOf(link)?.code ?? '', each)
  const state = manager.state()
  if (state.me.role !== 'manager') throw new Error('The crew needs a manager’s link.')
  if (!openShift(state)) throw new Error('No shift is open. Open one, then send the crew out.')

  const { orchardId } = manager.seat
  const known = (await mustRead(manager.seat.call, 'names', {
    p_orchard: orchardId,
  })) as Record<string, string>
  const phones: CrewPhone[] = []
  for (const [index, name] of crewNames.slice(0, people).entries()) {
    const random = randomFrom(seed * 1000 + index)
    const personId =
      Object.keys(known).find((id) => known[id] === name) ?? (await addPerson(manager.seat, name))
    await equip(manager.seat, state, personId, random)
    const code = newCode()
    const codeHash = hashOfCode(code)
    await mustSend(manager.seat, 'make_invite', { kind: 'device', subject: personId, codeHash })
    phones.push(await comeIn(backend, name, code))
  }
  const sheet = sheetOf(
    String(await mustRead(manager.seat.call, 'tree_sheet', { p_orchard: orchardId, p_version: 0 }))
  )
  if (!sheet) throw new Error('The tree sheet is not of the shape that this version knows.')
  return {
    manager,
    phones,
    land: landOf(sheet.trees, sheet.blocks),
    close: async () => {
      for (const phone of [manager, ...phones]) await phone.close()
    },
  }
}

async function comeIn(
  backend: BackendAddress,
  name: string,
  code: string,
  each?: (state: State) => void
): Promise<CrewPhone> {
  const client = await signIn(backend)
  const entered = await redeem(client.call, code, null)
  if (entered.state === 'in') return openCrewPhone(name, client, entered.seat, each)
  await client.close()
  throw new Error(`The link of ${name} lets nobody in (${entered.code}).`)
}

async function addPerson(manager: Seat, name: string): Promise<string> {
  const { person = '' } = await mustSend(manager, 'add_person', { name, role: 'volunteer' })
  return person
}

/** Not everybody may do everything, so that the rules have something to refuse. */
async function equip(manager: Seat, state: State, personId: string, random: Random): Promise<void> {
  const skills: [Skill, number][] = [
    ['prunes_alone', 75],
    ['hand_saw', 40],
    ['ladder', 20],
  ]
  const granted = skills.filter(([, chance]) => random.percent(chance)).map(([skill]) => skill)
  for (const skill of granted) {
    if (state.skills[personId]?.[skill] === undefined)
      await mustSend(manager, 'grant_skill', { subject: personId, skill })
  }
  const owned = Object.values(state.tools).filter(({ ownedBy }) => ownedBy === personId)
  const wanted = granted.includes('hand_saw') ? (['pruner', 'saw'] as const) : (['pruner'] as const)
  for (const kind of wanted) {
    if (owned.some((tool) => tool.kind === kind)) continue
    const label = `Own ${kind}`
    await mustSend(manager, 'add_tool', { label, kind, ownedBy: personId })
  }
}

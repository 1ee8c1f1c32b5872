/** Ann's phone, with a line to a referee in memory. */

import type { EmergencyCard } from '@/lib/data/answers'
import type { Membership } from '@/lib/data/backend'
import { sheetOf } from '@/lib/data/sheet'
import { openSession, type SessionBackend } from '@/lib/state/session'
import { startingView, type View } from '@/lib/state/view'
import { ownerKey } from '@/lib/sync/owner'

import { ann, idOf } from '../events/a-state'
import type { FakeClock } from '../sync/fakes/clock'
import { memoryBells, memoryLocks, memoryStorage, plainRandom } from '../sync/fakes/device'
import type { Line, Referee } from '../sync/fakes/referee'

export const membership: Membership = {
  orchardId: idOf('orchard'),
  orchardName: 'Three Wells',
  language: 'en',
  personId: ann,
  personName: 'Ann',
  role: 'volunteer',
  admitted: true,
}

export const sheetText = JSON.stringify({
  v: 1,
  blocks: [
    {
      no: 1,
      code: 'S',
      name: 'South',
      rowSpacingM: 5,
      treeSpacingM: 4,
      bearingDeg: null,
      firstLatE7: null,
      firstLonE7: null,
      taggedEnd: 'low',
    },
  ],
  cultivars: [{ no: 1, species: 'apple', name: 'Reineta', habit: 'spur' }],
  species: ['apple'],
  lat0: 0,
  lon0: 0,
  trees: {
    no: [1, 2, 3, 4],
    block: [1, 1, 1, 1],
    row: [1, 1, 1, 1],
    place: [1, 2, 3, 4],
    species: [0, 0, 0, 0],
    cultivar: [1, 0, 0, 0],
    size: [2, 0, 0, 0],
    planted: [1999, 0, 0, 0],
    height: [220, 220, 220, 0],
    trunk: [0, 0, 0, 0],
    saw: [0, 0, 0, 0],
    life: [0, 0, 0, 0],
    lat: [null, null, null, null],
    lon: [null, null, null, null],
  },
})

export function aDevice(clock: FakeClock) {
  const bells = memoryBells()
  return { storage: memoryStorage(), clock, locks: memoryLocks(), bellOf: () => bells() }
}

const noCard = { version: 0, epoch: idOf('epoch'), card: {} }

export function openPhone(
  clock: FakeClock,
  line: Line,
  device = aDevice(clock),
  name = 'phone',
  readCard = (): EmergencyCard | null => noCard,
  names: Readonly<Record<string, string>> = { [ann]: 'Ann' }
) {
  let view: View = startingView
  const drawn: View[] = []
  const backend: SessionBackend = {
    address: 'https://orchard',
    as: () => line,
    names: async (_, people) => {
      const asked = Object.entries(names).filter(([id]) => people === null || people.includes(id))
      return answered(line, Object.fromEntries(asked))
    },
    treeSheet: async () => answered(line, { text: sheetText, sheet: theSheet() }),
    emergencyCard: async () => {
      const card = readCard()
      return card ? answered(line, card) : { ok: false, fault: 'offline' }
    },
    briefing: async () => answered(line, { version: 1, change: 'first' as const, topics: [] }),
  }
  const session = openSession({
    ...device,
    random: plainRandom(name),
    backend,
    bell: device.bellOf(),
    userId: 'ann',
    membership,
    mine: () => [ann],
    owner: ownerKey({
      backend: 'https://orchard',
      orchardId: membership.orchardId,
      userId: 'ann',
      personId: ann,
    }),
    changed: (next) => {
      view = next
      drawn.push(next)
    },
  })
  return { ...session, view: () => view, drawn, device }
}

function answered<Value>(line: Line, value: Value) {
  return line.online
    ? { ok: true as const, value }
    : { ok: false as const, fault: 'offline' as const }
}

function theSheet() {
  const sheet = sheetOf(sheetText)
  if (!sheet) throw new Error('not a sheet')
  return sheet
}

/** The referee as it is when Ann is in the middle of a day. */
export function dealTo(referee: Referee, tree: number) {
  return referee.happen('trees_dealt', { trees: [tree], to: [ann] })
}

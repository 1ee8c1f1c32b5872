/**
 * What is read apart from events and kept for times without signal: names, the tree sheet, the emergency
 * card, the briefing.
 */

import type { EmergencyCard } from '@/lib/data/answers'
import type { Backend, Membership } from '@/lib/data/backend'
import { type Sheet, sheetOf } from '@/lib/data/sheet'
import { type Event, isHeard } from '@/lib/events/event'
import { openShift } from '@/lib/events/look-ups'
import type { State } from '@/lib/events/state'
import type { Storage } from '@/lib/sync/ports'

import { briefingName } from './reads'
import type { View } from './view'

type TextsParts = {
  backend: Pick<Backend, 'address' | 'names' | 'treeSheet' | 'emergencyCard' | 'briefing'>
  storage: Storage
  membership: Membership
  owner: string
  changed: (texts: Partial<Pick<View, 'names' | 'sheet' | 'ground' | 'emergency'>>) => void
}

type KeptSheet = { version: number; text: string }

export type Texts = {
  /** What was kept last time. */
  load: () => Promise<void>
  /** Asks for whatever this state or these events make stale. */
  follow: (state: State, events: readonly Event[]) => void
  /** Asks again for what did not come: an answer may have been lost and nothing happened since. */
  askAgain: (state: State) => void
}

export function keepTexts({ backend, storage, membership, owner, changed }: TextsParts): Texts {
  const { orchardId } = membership
  const sheetKey = `sheet|${backend.address}|${orchardId}`
  const namesKey = `names|${owner}`
  const cardKey = `emergency|${owner}`
  const underWay = new Set<string>()
  let names: Record<string, string> = {}
  let sheetVersion = 0
  let hasAllNames = false
  let briefingKept = ''
  let card: EmergencyCard | null = null

  return { load, follow, askAgain }

  async function load(): Promise<void> {
    // Only texts of ours are written under these keys.
    const kept = (await storage.read(namesKey)) as Record<string, string> | undefined
    if (kept) show(kept)
    const sheet = (await storage.read(sheetKey)) as KeptSheet | undefined
    const unpacked = sheet ? sheetOf(sheet.text) : null
    if (unpacked && sheetVersion === 0) showSheet(unpacked)
    const keptCard = (await storage.read(cardKey)) as EmergencyCard | undefined
    if (keptCard) showCard(keptCard)
  }

  function follow(state: State, events: readonly Event[]): void {
    if (events.length === 0) void once('names', () => readNames(null))
    const forgotten = events.flatMap(forgottenIn)
    const people = events.flatMap(personIn).filter((id) => !forgotten.includes(id))
    if (people.length > 0) void readNames(people)
    if (forgotten.length > 0) void drop(forgotten)
    askAgain(state)
  }

  function askAgain(state: State): void {
    if (!hasAllNames) void once('names', () => readNames(null))
    if (state.sheetVersion > sheetVersion) void once('sheet', () => readSheet(state.sheetVersion))
    const { emergencyVersion } = state.orchard
    if (card?.version !== emergencyVersion || card.epoch !== state.epoch) {
      void once('emergency', readCard)
    }
    const shift = openShift(state)
    if (shift) void once('briefing', () => keepBriefing(shift.id, shift.briefingVersion))
  }

  async function readCard(): Promise<void> {
    const told = await backend.emergencyCard(orchardId)
    if (!told.ok) return
    showCard(told.value)
    await storage.write(cardKey, told.value)
  }

  function showCard(next: EmergencyCard): void {
    card = next
    changed({ emergency: next.card })
  }

  async function readNames(people: string[] | null): Promise<void> {
    const told = await backend.names(orchardId, people)
    if (!told.ok) return
    if (people === null) {
      hasAllNames = true
      await dropForgotten(told.value)
    }
    show(told.value)
    await storage.write(namesKey, names)
  }

  /** Names of people who left are kept here; while this phone was away one of them may have been forgotten. */
  async function dropForgotten(here: Record<string, string>): Promise<void> {
    const left = Object.keys(names).filter((id) => !Object.hasOwn(here, id))
    if (left.length === 0) return
    const told = await backend.names(orchardId, left)
    if (told.ok) await drop(left.filter((id) => !Object.hasOwn(told.value, id)))
  }

  async function drop(people: readonly string[]): Promise<void> {
    const kept = Object.entries(names).filter(([id]) => !people.includes(id))
    names = Object.fromEntries(kept)
    changed({ names })
    await storage.write(namesKey, names)
  }

  /** People who left keep their names here: their work is still on the map. */
  function show(more: Record<string, string>): void {
    names = { ...names, ...more }
    changed({ names })
  }

  async function readSheet(version: number): Promise<void> {
    const told = await backend.treeSheet(orchardId, version)
    if (!told.ok) return
    showSheet(told.value.sheet)
    await storage.write(sheetKey, { version: sheetVersion, text: told.value.text })
  }

  function showSheet(sheet: Sheet): void {
    sheetVersion = sheet.version
    changed({
      sheet,
      ground: {
        trees: new Map(sheet.trees.map((tree) => [tree.no, tree])),
        blocks: new Map(sheet.blocks.map((block) => [block.no, block])),
      },
    })
  }

  async function keepBriefing(shiftId: string, version: number): Promise<void> {
    const name = `${shiftId}|${version}`
    if (briefingKept === name || version === 0) return
    const told = await backend.briefing(orchardId, shiftId, null)
    if (!told.ok || !told.value) return
    briefingKept = `${shiftId}|${told.value.version}`
    // Also under its number: what is new is told against the version that was signed.
    for (const kept of [null, told.value.version]) {
      await storage.write(`read|${owner}|${briefingName(shiftId, kept)}`, told.value)
    }
  }

  async function once(name: string, run: () => Promise<void>): Promise<void> {
    if (underWay.has(name)) return
    underWay.add(name)
    await run().finally(() => underWay.delete(name))
  }
}

function forgottenIn(event: Event): string[] {
  return isHeard(event) && event.kind === 'person_forgotten' ? personIn(event) : []
}

/** Whose name may be new. */
function personIn(event: Event): string[] {
  if (!isHeard(event) || !event.kind.startsWith('person_')) return []
  const body = event.body
  const isNamed = typeof body === 'object' && body !== null && 'person' in body
  return isNamed && typeof body.person === 'string' ? [body.person] : []
}

/** A small orchard in an open shift: a lead, two volunteers, a few trees and tools. */

import { noWeather } from '@/lib/domain/safety/weather'
import type { Happening } from '@/lib/events/event'
import type { Flag, State } from '@/lib/events/state'

/** The same id for the same name, so that tests can speak of people. */
export function idOf(name: string): string {
  let number = 7
  for (const letter of name) number = (number * 31 + letter.charCodeAt(0)) % 2 ** 31
  return `00000000-0000-4000-8000-${number.toString(16).padStart(12, '0')}`
}

export const lead = idOf('lead')
export const ann = idOf('ann')
export const bo = idOf('bo')
export const round = idOf('round')
export const shift = idOf('shift')

export const morning = '2027-01-16T08:00:00.000Z'
export const later = '2027-01-16T09:00:00.000Z'

/** Everybody is ready. */
export function aState(change: Partial<State> = {}): State {
  const people = [lead, ann, bo]
  const each = <Value>(value: Value) => Object.fromEntries(people.map((id) => [id, value]))
  return {
    orchardId: idOf('orchard'),
    epoch: idOf('epoch'),
    head: 10,
    channelEpoch: 1,
    sheetVersion: 1,
    minClient: 0,
    me: { personId: ann, role: 'volunteer' },
    orchard: {
      name: 'Three Wells',
      timeZone: 'Europe/Madrid',
      language: 'en',
      units: 'metric',
      houseRules: {
        ladder_from_cm: 250,
        keep_out_m: 10,
        consent_version: 1,
        overhead_apart_m: 6,
        withdraw_minutes: 2,
      },
      emergencyVersion: 0,
      aerialVersion: 0,
    },
    people: {
      [lead]: { role: 'lead', admitted: true },
      [ann]: { role: 'volunteer', admitted: true },
      [bo]: { role: 'volunteer', admitted: true },
    },
    rounds: {
      [round]: {
        kind: 'winter',
        season: 2027,
        species: ['apple', 'plum'],
        from: '2027-01-01',
        to: '2027-03-01',
      },
    },
    workRoundId: round,
    shifts: {
      [shift]: {
        roundId: round,
        date: '2027-01-16',
        startsAt: morning,
        endsAt: '2027-01-16T14:00:00.000Z',
        state: 'open',
        signal: 'horn',
        briefingVersion: 1,
        briefingChange: 'first',
        comeDownVersion: 0,
        off: {},
      },
    },
    attendance: each({ state: 'here', since: morning }),
    briefed: each({ givenVersion: 1, signedVersion: 1 }),
    equipped: each(true),
    tools: {
      1: { label: 'P1', kind: 'pruner', fit: true, clean: true, heldBy: ann, ownedBy: null },
      2: { label: 'P2', kind: 'pruner', fit: true, clean: true, heldBy: bo, ownedBy: null },
      3: { label: 'S1', kind: 'saw', fit: true, clean: true, heldBy: null, ownedBy: null },
    },
    work: {},
    lookedOver: {},
    hauled: {},
    brushGoes: {},
    claims: {},
    deals: {},
    dealtBy: {},
    marked: Object.fromEntries(
      [1, 2, 3, 4].map((tree) => [tree, { mark: idOf(`mark ${tree}`), by: lead, photo: null }])
    ),
    flags: {},
    stops: {},
    calls: {},
    skills: {},
    consents: each(2027),
    minors: {},
    notFound: {},
    failedEquipment: {},
    weather: noWeather,
    forecast: null,
    exceptions: {},
    toLeave: {},
    ...change,
  }
}

export function aClaim(tree: number, people: State['claims'][string]['people']) {
  return {
    tree,
    row: null,
    purpose: 'work',
    kind: 'prune',
    ladder: false,
    buddyId: null,
    openedAt: morning,
    people,
  } as const
}

export function aFlag(tree: number, kind: 'disease' | 'arborist'): Flag {
  return {
    tree,
    kind,
    state: kind === 'disease' ? 'suspected' : 'open',
    sign: 'canker',
    severity: 'high',
    keepOutM: kind === 'arborist' ? 10 : null,
    reasons: null,
    limb: null,
    raisedBy: bo,
    raisedAt: morning,
    inside: {},
    photos: [],
    notes: 0,
  }
}

export function happened(kind: string, body: unknown, more: Partial<Happening> = {}): Happening {
  return {
    at: later,
    commandId: idOf('command'),
    personId: ann,
    byPersonId: ann,
    kind,
    body,
    ...more,
  }
}

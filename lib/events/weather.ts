/** The weather, what it puts off, who is told to come out because of it, and what a lead excepts. */

import type { Tree } from '@/lib/domain/orchard/types'
import {
  type Asked,
  isTooWindyForLadders,
  noWeather,
  stopCodes,
  stopsFor,
  weatherAfter,
  weatherOffs,
} from '@/lib/domain/safety/weather'
import * as shape from '@/lib/util/shape'

import type { Refusal } from './answer'
import { type Here, isTooDark, laddersLackLight, type PerhapsHere } from './dark'
import { type Folds, type Predictions, when } from './family'
import { openShift } from './look-ups'
import { withEntry, withoutKeys } from './record'
import { id, leaveWhy, orNull, reading, text } from './shapes'
import type { Instant, LeaveWhy, Shift, State } from './state'

const told = shape.withDefault(
  shape.record(id, shape.object({ claim: id, tree: orNull(shape.integer), why: leaveWhy })),
  {}
)
export const toldToLeave = { toLeave: told }

const written = shape.extend(reading, toldToLeave)
const answered = shape.object({ person: id })
const made = shape.object({ what: text, lifts: shape.array(text), because: text, ...toldToLeave })
const ended = shape.object({ what: text, ...toldToLeave })

export const weatherFolds: Folds = {
  weather_written: when(written, (state, { toLeave, ...reading }, { at }) =>
    withLeaving({ ...state, weather: weatherAfter(state.weather, reading) }, toLeave, at)
  ),
  weather_answered: when(answered, (state, { person }) => ({
    ...state,
    toLeave: withoutKeys(state.toLeave, [person]),
  })),
  forecast_brought_in: when(shape.object({ forecast: id }), (state, { forecast }) => ({
    ...state,
    forecast,
  })),
  exception_made: when(made, (state, { what, toLeave, ...facts }, { at, byPersonId }) => {
    const exception = { ...facts, madeBy: byPersonId, madeAt: at }
    const exceptions = withEntry(state.exceptions, what, exception)
    return withLeaving({ ...state, exceptions }, toLeave, at)
  }),
  exception_ended: when(ended, (state, { what, toLeave }, { at }) =>
    withLeaving({ ...state, exceptions: withoutKeys(state.exceptions, [what]) }, toLeave, at)
  ),
}

/** Told again by a newer event: they came back up meanwhile. */
export function withLeaving(state: State, told: ToldNow, at: Instant): State {
  const entries = Object.entries(told).map(([person, one]) => [person, { ...one, toldAt: at }])
  return { ...state, toLeave: { ...state.toLeave, ...Object.fromEntries(entries) } }
}

export const weatherPredictions: Predictions = {
  write_weather: (state, { args }, now, ground) => {
    const { at, ...facts } = args
    const reading = { ...facts, measuredAt: at === null || at > now ? now : at }
    const after = { ...state, weather: weatherAfter(state.weather, reading) }
    const toLeave = newlyPutOff(state, after, { ground, now })
    return [{ kind: 'weather_written', body: { ...reading, toLeave } }]
  },
  answer_weather: (_, { personId }) => [{ kind: 'weather_answered', body: { person: personId } }],
}

type ToldNow = Record<string, { claim: string; tree: number | null; why: LeaveWhy }>

/** Everybody at a tree that was not off before and is now, as private.tell_to_leave. */
export function newlyPutOff(before: State, after: State, here: Here): ToldNow {
  const known = claimsPutOff(before, here)
  const told: ToldNow = {}
  for (const [claim, why] of Object.entries(claimsPutOff(after, here))) {
    const facts = after.claims[claim]
    if (!facts || known[claim] === why) continue
    for (const person of Object.keys(facts.people)) told[person] = { claim, tree: facts.tree, why }
  }
  return told
}

/** Claim → why its people leave it now: the gravest reason alone. As private.claims_put_off. */
export function claimsPutOff(state: State, here: Here): Record<string, LeaveWhy> {
  const { ground, now } = here
  const shift = openShift(state)
  if (!shift) return {}
  const asked = askedOf(state, now)
  const laddersOff = laddersOffBecause(state, shift, here)
  const stop = stopsFor(asked)[0]?.code ?? (isTooDark(state, here) ? 'dark' : undefined)
  const putOff: Record<string, LeaveWhy> = {}
  for (const [id, claim] of Object.entries(state.claims)) {
    const tree = claim.tree === null ? undefined : ground.trees.get(claim.tree)
    const isPruned = claim.kind === 'prune' && tree !== undefined
    const why =
      stop ??
      (isPruned
        ? whyPutOff(state, tree, { asked, shift, laddersOff: claim.ladder && laddersOff !== null })
        : null)
    if (why) putOff[id] = why
  }
  return putOff
}

type ForTree = { asked: Asked; shift: Shift; laddersOff: boolean }

function whyPutOff(
  state: State,
  tree: Tree,
  { asked, shift, laddersOff }: ForTree
): LeaveWhy | null {
  if (laddersOff) return 'ladders_off'
  return speciesOffs(state, tree.species, { asked, shift }).length > 0 ? 'species_off' : null
}

export function askedOf({ weather, orchard }: State, now: Instant): Asked {
  return { weather, rules: orchard.houseRules, nowMs: Date.parse(now) }
}

/** Why trees of this species are off now, less what a lead excepts. As private.species_offs. */
export function speciesOffs(
  { exceptions }: State,
  species: string,
  { asked, shift }: Pick<ForTree, 'asked' | 'shift'>
): string[] {
  const byLead = shift.off[species]
  const all = [...(byLead ? [byLead] : []), ...weatherOffs(asked, species)]
  const lifted = exceptions[species]?.lifts ?? []
  return [...new Set(all)].filter((reason) => !lifted.includes(reason)).toSorted()
}

/** Without a time only what a lead said is known. */
export function laddersOffBecause(
  state: State,
  { off }: Pick<Shift, 'off'>,
  { ground, now }: PerhapsHere
): string | null {
  if (off.ladder) return off.ladder
  if (now === undefined) return null
  if (isTooWindyForLadders(askedOf(state, now))) return 'wind'
  return ground && laddersLackLight(state, { ground, now }) ? 'light' : null
}

/** The same for everybody, and no lack of any one person. */
export const ofTheDay: readonly string[] = [...stopCodes, 'dark']

/** What puts off all work, for everybody. Without a time nobody knows. */
export function weatherStops(state: State, { ground, now }: PerhapsHere): Refusal[] {
  if (now === undefined) return []
  const stops = stopsFor(askedOf(state, now)).map(({ code, until }) => ({
    code,
    ...(until !== undefined && { detail: { until } }),
  }))
  return ground && isTooDark(state, { ground, now }) ? [...stops, { code: 'dark' }] : stops
}

/** What is off now. Asked once for each species, not for each tree. */
export type PutOff = { offs: (species: string) => string | undefined; laddersOff: string | null }

export function putOffIn(state: State, shift: Shift, here: PerhapsHere): PutOff {
  const { now } = here
  const asked = askedOf(now === undefined ? { ...state, weather: noWeather } : state, now ?? '')
  const known = new Map<string, string | undefined>()
  const offs = (species: string) => {
    if (!known.has(species)) known.set(species, speciesOffs(state, species, { asked, shift })[0])
    return known.get(species)
  }
  return { offs, laddersOff: laddersOffBecause(state, shift, here) }
}

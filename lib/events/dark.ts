/**
 * Whether there is light enough to work by, as the referee says it (private.is_too_dark, private.ladders_lack_light).
 * Where nobody knows where the orchard is, nobody knows that it is dark.
 */

import { houseRuleOf } from '@/lib/domain/safety/house-rules'
import { isSunUp } from '@/lib/domain/safety/sun'

import { type Ground, positionOf } from './ground'
import type { Instant, State } from './state'

export type Here = { ground: Ground; now: Instant }
/** What a caller may not know. */
export type PerhapsHere = { ground?: Ground | undefined; now?: Instant | undefined }

/** The key of a lead's exception, beside species: work goes on though the sun is down. */
export const darkness = 'dark'

export function isTooDark(state: State, { ground, now }: Here): boolean {
  const place = positionOf(ground)
  return place !== null && !isSunUp(place, Date.parse(now)) && !isLifted(state, 'dark')
}

/** Whoever is on a ladder needs light to come down by and to carry it home. */
export function laddersLackLight(state: State, { ground, now }: Here): boolean {
  const place = positionOf(ground)
  if (place === null || isLifted(state, 'light')) return false
  const nowMs = Date.parse(now)
  const soonMs = nowMs + houseRuleOf(state.orchard.houseRules, 'light_minutes') * 60_000
  return !isSunUp(place, nowMs) || !isSunUp(place, soonMs)
}

function isLifted({ exceptions }: State, reason: 'dark' | 'light'): boolean {
  return exceptions[darkness]?.lifts.includes(reason) === true
}

/**
 * The demo on an empty database: an invented orchard with a winter behind it, in the middle of its morning. Made by
 * the same commands that people send; only codes and the passing of time are the owner's.
 */

import type { Engine } from '../local/engine/engine'
import { lastEvent, spreadOverMorning } from './demo-clock'
import { beginMorning, planToday } from './demo-morning'
import { makeOrchard } from './demo-orchard'
import { lookAtTheSky } from './demo-weather'
import { workUntilNow } from './demo-work'
import { liveLastWinter } from './past/last-winter'

type Wanted = {
  /** A demo without a past is there in half the time. */
  lastWinter: boolean
}

/** Throws where anything is refused: the demo is then not whole, and its database not to be kept. */
export async function loadDemo(
  engine: Engine,
  now: Date = new Date(),
  { lastWinter }: Wanted = { lastWinter: true }
): Promise<void> {
  const orchard = await makeOrchard(engine, now)
  if (lastWinter) await liveLastWinter(engine, orchard, now)
  const before = await lastEvent(engine)
  const demo = await planToday(engine, orchard, now)
  await beginMorning(demo)
  await workUntilNow(demo)
  await lookAtTheSky(demo, now)
  await spreadOverMorning(engine, {
    after: before,
    startsAt: new Date(demo.day.shift.startsAt),
    now,
  })
}

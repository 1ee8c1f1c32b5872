/**
 * The demo on an empty database: an invented orchard in the middle of its morning. Made by the same
 * commands that people send; only codes and the passing of the morning are the owner's.
 */

import type { Engine } from '../local/engine/engine'
import { spreadOverMorning } from './demo-clock'
import { beginMorning } from './demo-morning'
import { makeOrchard } from './demo-orchard'
import { workUntilNow } from './demo-work'

/** Throws where anything is refused: the demo is then not whole, and its database not to be kept. */
export async function loadDemo(engine: Engine, now: Date = new Date()): Promise<void> {
  const demo = await makeOrchard(engine, now)
  await beginMorning(demo)
  await workUntilNow(demo)
  await spreadOverMorning(engine, { startsAt: new Date(demo.day.shift.startsAt), now })
}

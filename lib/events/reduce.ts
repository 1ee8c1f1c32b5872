/** The state after one more event. */

import * as shape from '@/lib/util/shape'

import { attendanceFolds } from './attendance'
import { briefingFolds } from './briefing'
import { brushFolds } from './brush'
import { callFolds } from './calls'
import { changes, foldChanges } from './changes'
import { claimFolds } from './claims'
import { dealFolds } from './deals'
import { equipmentFolds } from './equipment'
import { type Event, type Happening, isHeard } from './event'
import type { Folded, Folds } from './family'
import { flagFolds } from './flags'
import { keepOutFolds } from './keep-outs'
import { lookingOverFolds } from './looking-over'
import { orchardFolds } from './orchard'
import { peopleFolds } from './people'
import { shiftFolds } from './shift'
import type { State } from './state'
import { stopFolds } from './stops'
import { toolFolds } from './tools'
import { treeFolds } from './trees'
import { weatherFolds } from './weather'

const folds: Folds = {
  ...orchardFolds,
  ...treeFolds,
  ...peopleFolds,
  ...shiftFolds,
  ...briefingFolds,
  ...attendanceFolds,
  ...equipmentFolds,
  ...toolFolds,
  ...dealFolds,
  ...claimFolds,
  ...flagFolds,
  ...lookingOverFolds,
  ...keepOutFolds,
  ...brushFolds,
  ...stopFolds,
  ...callFolds,
  ...weatherFolds,
}

/** Total: an event out of turn changes nothing, and no event makes it throw. */
export function reduce(state: State, event: Event): Folded {
  if (event.n !== state.head + 1) return state
  if (!isHeard(event)) return { ...state, head: event.n }
  const after = fold(state, event)
  return after === 'fetch again' ? after : { ...after, head: event.n }
}

/** The same without the number, for what is only expected. */
export function fold(state: State, happening: Happening): Folded {
  const foldKind = Object.hasOwn(folds, happening.kind) ? folds[happening.kind] : undefined
  const told = { ...bodyOf(happening.body), ...bodyOf(happening.leadBody) }
  const shared = shape.read(changes, told)
  if (!foldKind || !shared) return 'fetch again'

  const after = foldKind(state, told, happening)
  return after === 'fetch again' ? after : foldChanges(after, shared.value)
}

function bodyOf(body: unknown): object {
  return typeof body === 'object' && body !== null ? body : {}
}

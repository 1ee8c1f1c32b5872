/** How a family of events and commands is written down. */

import * as shape from '@/lib/util/shape'

import type { Refusal } from './answer'
import type { Command, CommandName } from './commands'
import type { Happening } from './event'
import type { Ground } from './ground'
import type { Instant, State } from './state'

/** 'fetch again': this event cannot be folded here; the snapshot has what it changed. */
export type Folded = State | 'fetch again'
export type Fold = (state: State, body: unknown, happening: Happening) => Folded
export type Folds = Record<string, Fold>

/** A body that is not of this shape is one from the future, like an unknown kind. */
export function when<Body>(
  bodyShape: shape.Shape<Body>,
  fold: (state: State, body: Body, happening: Happening) => Folded
): Fold {
  return (state, body, happening) => {
    const told = shape.read(bodyShape, body)
    return told ? fold(state, told.value, happening) : 'fetch again'
  }
}

/** Whatever it carries is in the shared changes. */
export const onlyChanges: Fold = (state) => state

/** What a command does if the referee has nothing against it. */
export type Predicted = { kind: string; body: unknown }
export type Prediction = Predicted[] | { refused: Refusal[] } | 'asking'

export type Predictions = {
  [Name in CommandName]?: (
    state: State,
    command: Extract<Command, { name: Name }>,
    now: Instant,
    ground: Ground
  ) => Prediction
}

export function refuse(...codes: (string | false)[]): { refused: Refusal[] } | null {
  const refused = codes.filter((code) => code !== false).map((code) => ({ code }))
  return refused.length > 0 ? { refused } : null
}

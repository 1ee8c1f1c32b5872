/** The orchard itself: its name, units, house rules and emergency card. */

import * as z from 'zod/mini'

import { type Folds, onlyChanges, when } from './family'
import { orchard } from './shapes'
import type { State } from './state'

const changed = z.partial(orchard)

export const orchardFolds: Folds = {
  orchard_created: onlyChanges,
  orchard_changed: when(
    changed,
    (state, { name, timeZone, language, units, ...rest }): State => ({
      ...state,
      orchard: {
        name: name ?? state.orchard.name,
        timeZone: timeZone ?? state.orchard.timeZone,
        language: language ?? state.orchard.language,
        units: units ?? state.orchard.units,
        houseRules: { ...state.orchard.houseRules, ...rest.houseRules },
        emergency: rest.emergency ?? state.orchard.emergency,
      },
    })
  ),
}

/** The orchard itself: its name, units, house rules, and which version of the emergency card. */

import * as shape from '@/lib/util/shape'

import { type Folded, type Folds, onlyChanges, when } from './family'
import { orchard } from './shapes'

const changed = shape.partial(orchard)

export const orchardFolds: Folds = {
  orchard_created: onlyChanges,
  orchard_changed: when(changed, (state, { houseRules, ...facts }): Folded => {
    const rules = houseRules ?? state.orchard.houseRules
    // Consents count for the text in force only, and the referee has the list.
    if (rules.consent_version !== state.orchard.houseRules.consent_version) return 'fetch again'
    return {
      ...state,
      orchard: {
        name: facts.name ?? state.orchard.name,
        timeZone: facts.timeZone ?? state.orchard.timeZone,
        language: facts.language ?? state.orchard.language,
        units: facts.units ?? state.orchard.units,
        houseRules: rules,
        emergencyVersion: facts.emergencyVersion ?? state.orchard.emergencyVersion,
        aerialVersion: facts.aerialVersion ?? state.orchard.aerialVersion,
      },
    }
  }),
}

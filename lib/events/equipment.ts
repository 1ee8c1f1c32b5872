/** Protective equipment, checked per person and shift. */

import * as shape from '@/lib/util/shape'

import { type Folds, type Predictions, refuse, when } from './family'
import { openShift } from './look-ups'
import { withEntry, withoutKeys } from './record'
import { id, text } from './shapes'

/** A check that failed is told to leads and the person only. */
const checked = shape.object({
  person: shape.optional(id),
  failed: shape.withDefault(shape.array(text), []),
})

export const equipmentFolds: Folds = {
  equipment_checked: when(checked, (state, { person, failed }, { personId }) => {
    const whose = person ?? personId
    const passed = failed.length === 0
    return {
      ...state,
      equipped: withEntry(state.equipped, whose, passed),
      failedEquipment: passed
        ? withoutKeys(state.failedEquipment, [whose])
        : withEntry(state.failedEquipment, whose, failed),
    }
  }),
}

export const equipmentPredictions: Predictions = {
  check_equipment: (state, { personId, args }) =>
    refuse(!openShift(state) && 'shift_not_open', !state.attendance[personId] && 'not_arrived') ?? [
      {
        kind: 'equipment_checked',
        body:
          args.failedItems.length === 0
            ? { passed: true }
            : { person: personId, failed: args.failedItems },
      },
    ],
}

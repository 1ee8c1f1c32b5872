/** What a command will do, as far as the phone can know without the referee. */

import { attendancePredictions } from './attendance'
import { briefingPredictions } from './briefing'
import { callPredictions } from './calls'
import { claimPredictions } from './claims'
import type { Command } from './commands'
import { dealPredictions } from './deals'
import { equipmentPredictions } from './equipment'
import type { Prediction, Predictions } from './family'
import { flagPredictions } from './flags'
import { lookingOverPredictions } from './looking-over'
import { peoplePredictions } from './people'
import { fold } from './reduce'
import { shiftPredictions } from './shift'
import type { Instant, State } from './state'
import { stopPredictions } from './stops'
import { toolPredictions } from './tools'

const predictions: Predictions = {
  ...peoplePredictions,
  ...shiftPredictions,
  ...briefingPredictions,
  ...attendancePredictions,
  ...equipmentPredictions,
  ...toolPredictions,
  ...dealPredictions,
  ...claimPredictions,
  ...flagPredictions,
  ...lookingOverPredictions,
  ...stopPredictions,
  ...callPredictions,
}

/**
 * `asking`: only the referee decides. What is refused here is refused there too; what is
 * expected here may still be refused there.
 */
export function predict(state: State, command: Command, { now }: { now: Instant }): Prediction {
  // Looked up by the command's own name, so it takes this command.
  const predictOne = predictions[command.name] as
    | ((state: State, command: Command, now: Instant) => Prediction)
    | undefined
  return predictOne ? predictOne(state, command, now) : 'asking'
}

/** The state as it will be; unchanged where nothing is expected. */
export function foldPredicted(state: State, command: Command, now: Instant): State {
  const prediction = predict(state, command, { now })
  if (prediction === 'asking' || 'refused' in prediction) return state
  return prediction.reduce((before, { kind, body }) => {
    const after = fold(before, {
      at: now,
      commandId: command.id,
      personId: command.personId,
      byPersonId: state.me.personId,
      kind,
      body,
    })
    return after === 'fetch again' ? before : after
  }, state)
}

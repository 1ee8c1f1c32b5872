/** What a command will do, as far as the phone can know without the referee. */

import { attendancePredictions } from './attendance'
import { briefingPredictions } from './briefing'
import { brushPredictions } from './brush'
import { callPredictions } from './calls'
import { claimPredictions } from './claims'
import type { Command } from './commands'
import { dealPredictions } from './deals'
import { equipmentPredictions } from './equipment'
import type { Prediction, Predictions } from './family'
import { flagPredictions } from './flags'
import type { Ground } from './ground'
import { keepOutPredictions } from './keep-outs'
import { isLead } from './look-ups'
import { lookingOverPredictions } from './looking-over'
import { peoplePredictions } from './people'
import { fold } from './reduce'
import { shiftPredictions } from './shift'
import type { Instant, State } from './state'
import { stopPredictions } from './stops'
import { toolPredictions } from './tools'
import { weatherPredictions } from './weather'

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
  ...keepOutPredictions,
  ...brushPredictions,
  ...stopPredictions,
  ...callPredictions,
  ...weatherPredictions,
}

/** Without a sheet nobody knows what is near a tree. */
const notSeen: Ground = { trees: new Map(), blocks: new Map() }

/**
 * `asking`: only the referee decides. What is refused here is refused there too; what is
 * expected here may still be refused there.
 */
export function predict(
  state: State,
  command: Command,
  { now, ground = notSeen }: { now: Instant; ground?: Ground }
): Prediction {
  // Looked up by the command's own name, so it takes this command.
  const predictOne = predictions[command.name] as
    | ((state: State, command: Command, now: Instant, ground: Ground) => Prediction)
    | undefined
  return predictOne ? predictOne(state, command, now, ground) : 'asking'
}

/** The state as it will be; unchanged where nothing is expected. */
export function foldPredicted(
  state: State,
  command: Command,
  now: Instant,
  ground: Ground = notSeen
): State {
  const prediction = predict(state, command, { now, ground })
  if (prediction === 'asking' || 'refused' in prediction) return state
  return prediction.reduce((before, { kind, body }) => {
    const after = fold(before, {
      at: now,
      commandId: command.id,
      personId: command.personId,
      // Without the right of a lead, each person of a shared phone taps for themselves.
      byPersonId: isLead(state) ? state.me.personId : command.personId,
      kind,
      body,
    })
    return after === 'fetch again' ? before : after
  }, state)
}

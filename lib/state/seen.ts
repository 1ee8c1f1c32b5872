/**
 * What a person sees: what the referee confirmed, then what this device has not sent yet, in
 * order. A command can be both for a moment; playing it again could undo what somebody did
 * since, so what is known to be confirmed is skipped.
 */

import { isRefused } from '@/lib/events/answer'
import type { Ground } from '@/lib/events/ground'
import { foldPredicted } from '@/lib/events/predict'
import type { State } from '@/lib/events/state'
import type { Kept } from '@/lib/sync/ports'

export function seen(
  confirmed: State,
  items: readonly Kept[],
  { known, ground }: { known: ReadonlySet<string>; ground: Ground }
): State {
  return items
    .filter((kept) => isStillExpected(kept, confirmed) && !known.has(kept.command.id))
    .reduce((state, { command, at }) => foldPredicted(state, command, at, ground), confirmed)
}

/** Not answered yet; or answered, and its event not heard yet. */
function isStillExpected({ state, answer }: Kept, confirmed: State): boolean {
  if (state === 'unsent') return true
  return answer !== null && !isRefused(answer) && answer.n > confirmed.head
}

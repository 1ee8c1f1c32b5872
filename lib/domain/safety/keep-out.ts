/** How far around a hazard the ground is closed, before a lead looks at it. */

import type { Reason } from './ours-or-the-arborists'
import type { ReferCode } from './refer-rules'

/** What may bring the whole tree down. */
const wholeTree: readonly ReferCode[] = [
  'crack',
  'leaning_fresh',
  'leaning_far',
  'shell_thin',
  'conks',
  'dead_tree',
]

/** Of what falls, nobody within so many times its length: common practice. */
const drops = 1.5
const mostM = 200

/** The orchard's own distance, or more where a whole tree of known height may fall. To the next decimetre. */
export function keepOutFor(
  reasons: readonly Reason[],
  { heightCm, houseM }: { heightCm: number | null; houseM: number }
): number {
  const mayFall = reasons.some(({ code, seen }) => seen && wholeTree.includes(code))
  const reachM = mayFall ? ((heightCm ?? 0) / 100) * drops : 0
  return Math.min(mostM, Math.max(houseM, Math.ceil(reachM * 10 - 1e-6) / 10))
}

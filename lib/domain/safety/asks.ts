/** What a tree asks of the person who prunes it. */

import type { Tree } from '../orchard/types'

export type Asks = {
  /** Taller than what the orchard lets be pruned from the ground. */
  ladder: boolean
  saw: boolean
  /** Nobody measured it, so nobody leaves the ground for it. */
  feetOnTheGround: boolean
}

export type AskedOf = Pick<Tree, 'heightCm' | 'asksSaw'>

/** `ladderFromCm` is the house rule: higher trees ask for a ladder. The same rule in SQL decides. */
export function asksOf({ heightCm, asksSaw }: AskedOf, ladderFromCm: number): Asks {
  return {
    ladder: heightCm !== null && heightCm > ladderFromCm,
    saw: asksSaw,
    feetOnTheGround: heightCm === null,
  }
}

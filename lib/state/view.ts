/** Everything a screen can show: what the referee confirmed, then what this device has not sent yet. */

import type { Membership } from '@/lib/data/backend'
import type { Sheet } from '@/lib/data/sheet'
import type { Ground } from '@/lib/events/ground'
import type { Instant, State } from '@/lib/events/state'
import type { Kept } from '@/lib/sync/ports'

export type { Kept, Membership, Sheet }

export type Phase =
  /** Reading what is on this device, and asking. */
  | 'starting'
  /** Signed in for nobody yet: join by a link, or make an orchard. */
  | 'nobody'
  /** This device serves several people or orchards. */
  | 'choose'
  /** A lead has not let this person in yet. */
  | 'not_admitted'
  | 'in'
  /** Put out: what was not sent can be handed in. */
  | 'out'
  | 'signed_out'

export type Signal = 'asking' | 'reached' | 'no_signal'

/** A tree dealt to me that I began without signal. */
export type Begun = { tree: number; at: Instant }

export type View = {
  phase: Phase
  memberships: readonly Membership[]
  me: Membership | null
  /** As it is seen. Null until the first word of the referee, of now or of last time. */
  state: State | null
  /** The same without what is not sent yet. */
  confirmed: State | null
  sheet: Sheet | null
  /** By number, for rules and look-ups. Empty without a sheet. */
  ground: Ground
  names: Readonly<Record<string, string>>
  /** The emergency card by line, empty where none is written. Null: it has not come to this device yet. */
  emergency: Readonly<Record<string, string>> | null
  signal: Signal
  /** Since when the referee has not been heard. Null: it is heard. */
  outOfTouchSince: Instant | null
  unsent: readonly Kept[]
  /** Refused while nobody looked, with the words kept, until they are put away. */
  refused: readonly Kept[]
  /** Work of the last two days that the referee took as something else: also worked on, or late. */
  cameInOtherwise: readonly Kept[]
  /** Names of commands that are asked right now. */
  asking: readonly string[]
  begun: Begun | null
  /** Add it to the device's clock to get the referee's. */
  skewMs: number
  /** A newer app is needed, and nothing is unsent: reload the page. */
  reloadWanted: boolean
}

export const emptyGround: Ground = { trees: new Map(), blocks: new Map() }

export const startingView: View = {
  phase: 'starting',
  memberships: [],
  me: null,
  state: null,
  confirmed: null,
  sheet: null,
  ground: emptyGround,
  names: {},
  emergency: null,
  signal: 'asking',
  outOfTouchSince: null,
  unsent: [],
  refused: [],
  cameInOtherwise: [],
  asking: [],
  begun: null,
  skewMs: 0,
  reloadWanted: false,
}

/** A walk: which screens a person sees, once their day has come so far. */

import type { LeadMessages, Messages } from '@/lib/text/messages'

import type { DeviceName } from '../devices'
import type { Orchard, PersonName } from '../orchard'

export type Words = Messages & LeadMessages

/** A path; or a path and what is pressed there, in whichever language. */
export type Screen = string | { path: string; press: (words: Words) => string }

export type Walk = {
  /** "nobody yet", "a volunteer at a tree". */
  of: string
  /** Null: a browser that nobody is signed in on. */
  who: PersonName | null
  device: DeviceName
  /** Brings the day so far, and says which screens are looked at then. */
  screens: (orchard: Orchard) => Promise<readonly Screen[]> | readonly Screen[]
}

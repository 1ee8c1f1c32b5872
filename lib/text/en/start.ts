/** What a volunteer reads from the door to the first tree. */

import { consent } from './consent'
import { help } from './help'
import { ready } from './ready'
import { stop } from './stop'
import { things } from './things'

export const start = { things, consent, ready, stop, help }

/** What a volunteer reads before the first tree: small, so that the first screen is there soon. */

import { common } from './common'
import { consent } from './consent'
import { errors } from './errors'
import { help } from './help'
import { join } from './join'
import { ready } from './ready'
import { stop } from './stop'
import { things } from './things'

export const start = { common, things, join, consent, ready, stop, help, errors }

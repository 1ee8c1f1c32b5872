import type { start as en } from '../en/start'

import { common } from './common'
import { consent } from './consent'
import { errors } from './errors'
import { help } from './help'
import { join } from './join'
import { ready } from './ready'
import { stop } from './stop'
import { things } from './things'

export const start: typeof en = { common, things, join, consent, ready, stop, help, errors }

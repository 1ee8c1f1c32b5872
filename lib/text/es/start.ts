import type { start as en } from '../en/start'

import { consent } from './consent'
import { help } from './help'
import { ready } from './ready'
import { stop } from './stop'
import { things } from './things'

export const start: typeof en = { things, consent, ready, stop, help }

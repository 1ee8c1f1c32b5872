/** What is read before one is in: small, so that the first screen is there soon. */

import { common } from './common'
import { errors } from './errors'
import { join } from './join'

export const door = { common, join, errors }

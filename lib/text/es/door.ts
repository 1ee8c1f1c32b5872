import type { door as en } from '../en/door'

import { common } from './common'
import { errors } from './errors'
import { join } from './join'

export const door: typeof en = { common, join, errors }

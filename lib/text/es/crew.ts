import type { crew as en } from '../en/crew'

import { door } from './door'
import { start } from './start'
import { work } from './work'

export const crew: typeof en = { ...door, ...start, ...work }

import type { crew as en } from '../en/crew'

import { start } from './start'
import { work } from './work'

export const crew: typeof en = { ...start, ...work }

/** What everybody on a shift may read. */

import { door } from './door'
import { start } from './start'
import { work } from './work'

export const crew = { ...door, ...start, ...work }

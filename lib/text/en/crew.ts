/** What everybody on a shift may read. */

import { start } from './start'
import { work } from './work'

export const crew = { ...start, ...work }

/** Every screen there is, and what lies over it after one press, with who sees it and how far their day has come. */

import { walksOfAlarms } from './alarms'
import { walksOfLeads } from './lead'
import { walksOfManagers } from './manager'
import { walksOfVolunteers } from './volunteer'
import { walksOfWeather } from './weather'

export { openScreen } from './open-screen'

export const walks = [
  ...walksOfVolunteers,
  ...walksOfAlarms,
  ...walksOfLeads,
  ...walksOfManagers,
  ...walksOfWeather,
]

import type { lead as en } from '../en/lead'
import { aerial } from './aerial'
import { audit } from './audit'
import { board } from './board'
import { bringIn } from './bring-in'
import { brushRows } from './brush-rows'
import { calls } from './calls'
import { cameIn } from './came-in'
import { closeWatch } from './close-watch'
import { count } from './count'
import { dayAhead } from './day-ahead'
import { daySoFar } from './day-so-far'
import { disease } from './disease'
import { flags } from './flags'
import { fromPaper } from './from-paper'
import { ground } from './ground'
import { houseRules } from './house-rules'
import { inventory } from './inventory'
import { labels } from './labels'
import { leadMap } from './lead-map'
import { lookOver } from './look-over'
import { mapTools } from './map-tools'
import { paper } from './paper'
import { people } from './people'
import { plan } from './plan'
import { proposals } from './proposals'
import { record } from './record'
import { referral } from './referral'
import { forget, hours, invites, left, rooms, rounds, settings, shifts } from './rooms'
import { season } from './season'
import { setUp } from './set-up'
import { shift } from './shift'
import { takeOut } from './take-out'
import { weather } from './weather'

export const lead: typeof en = {
  labels,
  bringIn,
  takeOut,
  aerial,
  leadMap,
  lookOver,
  brushRows,
  mapTools,
  shift,
  people,
  board,
  fromPaper,
  paper,
  record,
  plan,
  proposals,
  dayAhead,
  daySoFar,
  calls,
  cameIn,
  count,
  inventory,
  disease,
  flags,
  ground,
  houseRules,
  referral,
  season,
  setUp,
  rooms,
  invites,
  rounds,
  shifts,
  hours,
  settings,
  left,
  forget,
  audit,
  weather,
  closeWatch,
}

/**
 * Whether to prune today, by species, with every reason. A reason says where it comes from and who may make an
 * exception. What protects people has none: it is measured again; but for darkness, which is reckoned. What protects
 * trees is for a lead to judge.
 */

import { houseRuleOf } from './house-rules'
import { commonPractice, houseRule, published, type Source } from './source'
import { dryMonthsOf, type Month, proneSpecies } from './species-season'
import type { Light } from './sun'
import { fahrenheitOf, toTenth } from './units'
import { type Asked, freshReading, isTooWindyForLadders, stopsFor, weatherOffs } from './weather'

export const reasonCodes = [
  'thunder',
  'too_windy',
  'too_hot',
  'dark',
  'season',
  'wet_wood',
  'rain',
  'put_off',
  'rain_free',
  'hot_for_trees',
  'ladders_wind',
  'ladders_light',
  'weather_unknown',
] as const
export type ReasonCode = (typeof reasonCodes)[number]

export type Reason = {
  code: ReasonCode
  /** `stops`: nobody works. `off`: not this species. `note`: go, and know this. */
  weight: 'stops' | 'off' | 'note'
  source: Source
  /** Who may make an exception. */
  exception: 'lead' | 'nobody'
}

export type Verdict = {
  species: string
  says: 'go' | 'not_this_species' | 'stop'
  reasons: Reason[]
  /** A lead judged otherwise, and these are not counted. */
  lifted: Reason[]
}

export type Day = Asked & {
  month: Month
  /** From today to the first rain of the wet season. */
  daysToFirstRain: number
  /** Put off by a lead: species, or 'ladder', and why. */
  off: Readonly<Record<string, string>>
  /** Species, or 'dark', and which reasons a lead's exception lifts. */
  exceptions: Readonly<Record<string, readonly string[]>>
  /** Null: nobody knows where the orchard is. */
  sun: Light | null
}

/**
 * Names alone, which are the same in every language: what each source says, and which limit is the orchard's own,
 * stands with the house rules.
 */
const sources: Record<ReasonCode, Source> = {
  thunder: published('NWS'),
  too_windy: houseRule,
  too_hot: published('NWS'),
  dark: commonPractice,
  season: published('UC IPM'),
  wet_wood: published('OSU Extension; Sentelhas'),
  rain: published('UC Master Gardeners, Napa'),
  put_off: commonPractice,
  rain_free: published('UC IPM; Ramos, Moller, English 1975'),
  hot_for_trees: published('UC Cooperative Extension, Sonoma'),
  ladders_wind: published('OSHA QuickCard'),
  ladders_light: commonPractice,
  weather_unknown: houseRule,
}

export function verdictFor(species: string, day: Day): Verdict {
  const all = [...stopReasons(day), ...offReasons(species, day), ...notes(species, day)]
  const isLifted = ({ code, exception }: Reason) =>
    exception === 'lead' && (liftedBy(day, species).includes(code) || liftsDarkness(day, code))
  const reasons = all.filter((reason) => !isLifted(reason))
  const has = (weight: Reason['weight']) => reasons.some((reason) => reason.weight === weight)
  return {
    species,
    says: has('stops') ? 'stop' : has('off') ? 'not_this_species' : 'go',
    reasons,
    lifted: all.filter(isLifted),
  }
}

/** Lamps lift darkness for the ground; only where it is day all the same do ladders go up, too. */
function liftsDarkness({ exceptions }: Day, code: ReasonCode): boolean {
  const lifts = exceptions.dark ?? []
  return lifts.includes(code === 'ladders_light' ? 'light' : code)
}

function liftedBy({ exceptions }: Day, species: string): ReasonCode[] {
  return (exceptions[species] ?? []).map(offCode)
}

function stopReasons(day: Day): Reason[] {
  const stops = stopsFor(day).map(({ code }) => reason(code, 'stops'))
  return isDark(day) ? [...stops, reason('dark', 'stops')] : stops
}

function offReasons(species: string, day: Day): Reason[] {
  const byLead = day.off[species]
  const codes: ReasonCode[] = [
    ...(isInSeason(species, day) ? [] : ['season' as const]),
    ...weatherOffs(day, species),
    ...(byLead === undefined ? [] : [offCode(byLead)]),
  ]
  return [...new Set(codes)].map((code) => reason(code, 'off'))
}

function isInSeason(species: string, { rules, month }: Day): boolean {
  const dry: Readonly<Record<string, readonly Month[]>> = dryMonthsOf(rules)
  return dry[species]?.includes(month) !== false
}

/** What a lead put off for another reason than calendar and rain is theirs to say. */
function offCode(byLead: string): ReasonCode {
  return byLead === 'season' || byLead === 'rain' || byLead === 'wet_wood' ? byLead : 'put_off'
}

function notes(species: string, day: Day): Reason[] {
  const fresh = freshReading(day)
  const isDue = day.daysToFirstRain < houseRuleOf(day.rules, 'rain_free_days')
  const laddersUntilMs = lightForLaddersMs(day)
  const isHotForTrees =
    fresh?.temperatureC != null && toTenth(fahrenheitOf(fresh.temperatureC)) >= tooHotForTreesF
  const codes: (ReasonCode | false)[] = [
    // Out of season it is off anyway.
    proneSpecies.includes(species) && isInSeason(species, day) && isDue && 'rain_free',
    isHotForTrees && 'hot_for_trees',
    isTooWindyForLadders(day) && 'ladders_wind',
    // In the dark nobody works anyway, but where a lead lets them.
    (isDark(day)
      ? liftsDarkness(day, 'dark')
      : laddersUntilMs !== null && day.nowMs >= laddersUntilMs) && 'ladders_light',
    fresh === null && 'weather_unknown',
  ]
  return codes.filter((code) => code !== false).map((code) => reason(code, 'note'))
}

/** UC Cooperative Extension, Sonoma, and UC Master Gardeners, Tulare: not in days of 100 °F and over. */
const tooHotForTreesF = 100

/** Common practice: work on the ground ends at sunset. */
function isDark({ sun, nowMs }: Day): boolean {
  if (sun === null || sun.state === 'up_all_day') return false
  return sun.state === 'down_all_day' || nowMs < sun.times.from || nowMs >= sun.times.to
}

/** Common practice: whoever is on a ladder needs light to come down and to carry it home. */
export function lightForLaddersMs({ sun, rules }: Pick<Day, 'sun' | 'rules'>): number | null {
  if (sun?.state !== 'rises') return null
  return sun.times.to - houseRuleOf(rules, 'light_minutes') * 60_000
}

function reason(code: ReasonCode, weight: Reason['weight']): Reason {
  // Darkness is reckoned, not measured: who stands there sees lamps, or that it is day.
  const byLead = weight === 'off' || code === 'dark' || code === 'ladders_light'
  return { code, weight, source: sources[code], exception: byLead ? 'lead' : 'nobody' }
}

/** From a day (YYYY-MM-DD) to the next first of that month; 0 in the month itself. */
export function daysToMonth(day: string, month: Month): number {
  const [year = 1970, now = 1, date = 1] = day.split('-').map(Number)
  if (now === month) return 0
  const first = Date.UTC(month > now ? year : year + 1, month - 1, 1)
  return Math.round((first - Date.UTC(year, now - 1, date)) / 86_400_000)
}

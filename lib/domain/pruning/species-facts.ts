/**
 * How each species bears and is pruned. What is marked as from memory is what handbooks usually print;
 * University of California ANR 8057 and 8058 are the places to look it up.
 */

import type { Species } from '../orchard/types'
import { type Fact, fromMemory, notConfirmed, practice, type Range, read, secondHand } from './fact'

export const bearingWoods = [
  'spurs',
  'last_years_shoots',
  'base_of_last_years_shoots',
  'tips_of_last_years_shoots',
  'current_shoots',
  'shoots_from_last_years_tips',
] as const
export type BearingWood = (typeof bearingWoods)[number]

export const forms = ['open_centre', 'leader', 'unknown'] as const
/** How a species is usually grown. This tree may differ, and then its lead says so. */
export type Form = (typeof forms)[number]

export const seasons = [
  'dormant',
  'dormant_or_summer',
  'dry_after_harvest',
  'dry',
  'not_late_winter',
  'unknown',
] as const
/** When it is usually pruned; the months are the orchard's own. */
export type Season = (typeof seasons)[number]

export const cautions = ['milky_sap', 'thorns'] as const
/** What the tree itself does to who prunes it. */
export type Caution = (typeof cautions)[number]

/** How much goes in a usual year: a share, or only a word. */
export type Take = ({ of: 'bearing_wood' | 'last_years_wood' } & Range) | 'light' | 'varies'

export type SpeciesFacts = {
  bornOn: Fact<readonly BearingWood[]>
  /** How long a spur bears; null where there are none to renew. */
  spurYears: Fact<Range> | null
  take: Fact<Take>
  form: Fact<Form>
  season: Fact<Season>
  caution: Fact<Caution> | null
}

const openCentre = read<Form>('open_centre', 'master_gardener_column')
const leader = read<Form>('leader', 'master_gardener_column')
const dormant = fromMemory<Season>('dormant')
const dormantOrSummer = fromMemory<Season>('dormant_or_summer')

const peach: SpeciesFacts = {
  bornOn: secondHand(['last_years_shoots'], 'garden_references'),
  spurYears: null,
  take: secondHand({ of: 'last_years_wood', least: 0.4, most: 0.5 }, 'garden_references'),
  form: openCentre,
  season: dormant,
  caution: null,
}

const europeanPlum: SpeciesFacts = {
  bornOn: fromMemory(['spurs']),
  spurYears: fromMemory({ least: 8, most: 10 }),
  take: fromMemory({ of: 'last_years_wood', least: 0.2, most: 0.2 }),
  form: openCentre,
  season: dormantOrSummer,
  caution: null,
}

const pear: SpeciesFacts = {
  bornOn: fromMemory(['spurs']),
  spurYears: fromMemory({ least: 8, most: 10 }),
  take: fromMemory({ of: 'last_years_wood', least: 0.1, most: 0.2 }),
  form: leader,
  season: dormant,
  caution: null,
}

const facts: Record<Species, SpeciesFacts> = {
  apricot: {
    bornOn: fromMemory(['last_years_shoots', 'spurs']),
    spurYears: secondHand({ least: 3, most: 5 }, 'garden_references'),
    take: secondHand({ of: 'bearing_wood', least: 0.2, most: 0.2 }, 'garden_references'),
    form: openCentre,
    season: read('dry_after_harvest', 'uc_ipm_apricot'),
    caution: null,
  },
  peach,
  nectarine: peach,
  cherry: {
    bornOn: fromMemory(['spurs', 'base_of_last_years_shoots']),
    spurYears: fromMemory({ least: 10, most: 12 }),
    take: fromMemory({ of: 'last_years_wood', least: 0.05, most: 0.1 }),
    form: openCentre,
    season: read('dry_after_harvest', 'uc_ipm_cherry'),
    caution: null,
  },
  sour_cherry: {
    bornOn: fromMemory(['last_years_shoots', 'spurs']),
    spurYears: notConfirmed({ least: 2, most: 5 }),
    take: fromMemory({ of: 'last_years_wood', least: 0.1, most: 0.2 }),
    form: openCentre,
    season: fromMemory('dry_after_harvest'),
    caution: null,
  },
  japanese_plum: {
    bornOn: fromMemory(['spurs', 'last_years_shoots']),
    spurYears: fromMemory({ least: 6, most: 8 }),
    take: fromMemory({ of: 'last_years_wood', least: 0.3, most: 0.5 }),
    form: openCentre,
    season: dormantOrSummer,
    caution: null,
  },
  european_plum: europeanPlum,
  // Nobody said which: the one of which less goes.
  plum: europeanPlum,
  apple: {
    bornOn: fromMemory(['spurs', 'tips_of_last_years_shoots']),
    spurYears: secondHand({ least: 8, most: 10 }, 'garden_references'),
    take: fromMemory({ of: 'last_years_wood', least: 0.1, most: 0.2 }),
    form: leader,
    season: dormant,
    caution: null,
  },
  pear,
  quince: {
    bornOn: notConfirmed(['current_shoots']),
    spurYears: null,
    take: fromMemory('light'),
    form: leader,
    season: dormant,
    caution: null,
  },
  fig: {
    bornOn: secondHand(['current_shoots', 'last_years_shoots'], 'garden_references'),
    spurYears: null,
    take: fromMemory('varies'),
    form: openCentre,
    season: dormant,
    caution: fromMemory('milky_sap'),
  },
  persimmon: {
    bornOn: secondHand(['shoots_from_last_years_tips'], 'garden_references'),
    spurYears: null,
    take: fromMemory('light'),
    form: leader,
    season: dormant,
    caution: null,
  },
  almond: {
    bornOn: fromMemory(['spurs', 'last_years_shoots']),
    spurYears: secondHand({ least: 5, most: 5 }, 'garden_references'),
    take: secondHand({ of: 'bearing_wood', least: 0.2, most: 0.2 }, 'garden_references'),
    form: openCentre,
    season: secondHand('dry', 'garden_references'),
    caution: null,
  },
  walnut: {
    bornOn: fromMemory(['current_shoots']),
    spurYears: null,
    take: fromMemory('light'),
    // A modified one.
    form: fromMemory('leader'),
    season: fromMemory('not_late_winter'),
    caution: null,
  },
  pomegranate: {
    bornOn: secondHand(['spurs'], 'garden_references'),
    spurYears: notConfirmed({ least: 3, most: 4 }),
    take: fromMemory('light'),
    // Or several trunks.
    form: fromMemory('open_centre'),
    season: dormant,
    caution: fromMemory('thorns'),
  },
  other: {
    bornOn: practice([]),
    spurYears: null,
    take: practice('light'),
    form: practice('unknown'),
    season: practice('unknown'),
    caution: null,
  },
}

export function factsOf(species: Species): SpeciesFacts {
  return facts[species]
}

/** Of such a species no cultivar bears on spurs, whatever somebody wrote down. */
export function hasSpurs(species: Species): boolean {
  const { bornOn } = facts[species]
  return bornOn.value.length === 0 || bornOn.value.includes('spurs')
}

/** Spurs of a pome branch and stay; those of a stone fruit are single, and some hold nothing but flowers. */
export function spurKind(species: Species): 'pome' | 'stone' {
  return species === 'apple' || species === 'pear' ? 'pome' : 'stone'
}

export function formOf(species: Species): Form {
  return facts[species].form.value
}

/**
 * With a bearing life of so many years, one part in so many is made new each year: second hand, general
 * references. The longer life asks for less, so it comes first.
 */
export function renewalShare({ least, most }: Range): Range {
  return { least: 1 / most, most: 1 / least }
}

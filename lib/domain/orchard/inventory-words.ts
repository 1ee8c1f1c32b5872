/** What people write in the fields of a table, in English and Spanish, and what it means. */

import { folded } from './inventory-columns'
import {
  type BudSite,
  budSites,
  type Habit,
  habits,
  type Life,
  type SizeClass,
  type Species,
  species,
} from './types'

export type Words<Value extends string> = Record<Value, readonly string[]>

const speciesWords: Words<Species> = {
  apple: ['apple', 'apples', 'apple tree', 'manzano', 'manzana', 'manzanos'],
  pear: ['pear', 'pears', 'pear tree', 'peral', 'pera', 'perales'],
  plum: ['plum', 'plums', 'plum tree', 'prune', 'ciruelo', 'ciruela', 'ciruelos'],
  european_plum: ['european plum', 'ciruelo europeo', 'ciruela europea'],
  japanese_plum: ['japanese plum', 'ciruelo japones', 'ciruela japonesa'],
  apricot: [
    'apricot',
    'apricots',
    'apricot tree',
    'albaricoquero',
    'albaricoque',
    'damasco',
    'chabacano',
  ],
  peach: ['peach', 'peaches', 'peach tree', 'melocotonero', 'melocoton', 'duraznero', 'durazno'],
  nectarine: ['nectarine', 'nectarines', 'nectarina', 'nectarino', 'nectarinero'],
  cherry: ['cherry', 'cherries', 'cherry tree', 'sweet cherry', 'cerezo', 'cereza', 'cerezos'],
  sour_cherry: ['sour cherry', 'tart cherry', 'guindo', 'guinda'],
  quince: ['quince', 'quinces', 'membrillero', 'membrillo'],
  walnut: ['walnut', 'walnuts', 'nogal', 'nuez'],
  fig: ['fig', 'figs', 'fig tree', 'higuera', 'higo'],
  persimmon: ['persimmon', 'kaki', 'caqui'],
  almond: ['almond', 'almonds', 'almond tree', 'almendro', 'almendra'],
  pomegranate: ['pomegranate', 'granado', 'granada'],
  other: ['other', 'otro', 'otra', 'otros'],
}
const habitWords: Words<Habit> = {
  spur: ['spur', 'spurs', 'dardo', 'dardos', 'ramillete', 'lamburda'],
  shoot: ['shoot', 'shoots', 'last years shoots', 'brote', 'brotes', 'ramo mixto', 'ramos mixtos'],
  both: ['both', 'ambos', 'los dos'],
  unknown: ['unknown', 'not known', 'desconocido', 'no se sabe', '?'],
}
const budWords: Words<BudSite> = {
  base: ['base', 'lower third', 'tercio inferior'],
  middle: ['middle', 'centro', 'tercio medio'],
  tip: ['tip', 'punta', 'tercio superior'],
  unknown: habitWords.unknown,
}
const lifeWords: Words<Life> = {
  standing: ['standing', 'alive', 'en pie', 'vivo', 'viva'],
  dead: ['dead', 'muerto', 'muerta', 'seco'],
  removed: ['removed', 'taken out', 'arrancado', 'quitado', 'talado'],
  gap: ['gap', 'empty', 'missing', 'hueco', 'vacio', 'falta'],
}
const sizeWords: Words<SizeClass> = {
  young: ['young', 'joven', 'plantón', 'planton'],
  small: ['small', 'pequeno', 'bajo'],
  medium: ['medium', 'mediano', 'medio'],
  large: ['large', 'big', 'grande'],
}
const yesNoWords: Words<'yes' | 'no'> = {
  yes: ['yes', 'y', 'true', '1', 'x', 'si', 's', 'verdadero'],
  no: ['no', 'n', 'false', '0', '-', 'falso'],
}

export const speciesIn = finder(speciesWords, species, asOne)
export const habitIn = finder(habitWords, habits)
export const budsIn = finder(budWords, budSites)
export const lifeIn = finder(lifeWords, ['standing', 'dead', 'removed', 'gap'])
export const sizeIn = finder(sizeWords, ['young', 'small', 'medium', 'large'])
export const yesNoIn = finder(yesNoWords, ['yes', 'no'])

/** The signs of a hazard that a table may name; whatever else is written is `other`. */
export const hazardSigns = [
  'hanging_limb',
  'crack',
  'power_line',
  'too_high_or_thick',
  'leaning',
  'nest',
  'other',
] as const
export type HazardSign = (typeof hazardSigns)[number]

/** In what is written, or in the name of the column where a yes or a cross stands. */
const hazardWords: [HazardSign, RegExp][] = [
  ['power_line', /\b(power|electric\w*|lines?|wires?|cables?|tendido|lineas?|electric[oa]s?)\b/],
  ['hanging_limb', /\b(hang\w*|broken|colg\w*|rota|roto)\b/],
  ['crack', /\b(crack\w*|split|grieta\w*|rajad[oa]|rajadura)\b/],
  ['leaning', /\b(lean\w*|inclinad[oa]|levantad[oa]s?)\b/],
  ['nest', /\b(nests?|bees?|wasps?|hornets?|nidos?|abejas?|avispas?|avispero)\b/],
  ['too_high_or_thick', /\b(too high|too thick|high|thick|alto|grueso)\b/],
]

/** Null: none. */
export function hazardIn(text: string, head: string): HazardSign | null {
  const said = folded(text)
  if (said === '' || yesNoIn(said) === 'no' || /^([-–—]+|none|n\/a|ningun[oa]?|nada)$/.test(said))
    return null
  const exact = hazardSigns.find((sign) => folded(sign) === said)
  const named = yesNoIn(said) === 'yes' ? folded(head) : said
  return exact ?? hazardWords.find(([, words]) => words.test(named))?.[0] ?? 'other'
}

/** What people write where they know nothing, and what a spreadsheet puts there. */
export function saysNothing(text: string): boolean {
  // Asked of every field of a hundred thousand rows.
  if (text === '' || text.length > 14 || /\d/.test(text)) return false
  return /^([-–—?.]+|#?n[/.]?[ad]\.?|s[/.]?d\.?|sin datos?|(un|not )known|unknown|desconocid[oa]|no se sabe|ningun[oa]|none)$/.test(
    folded(text)
  )
}

/** "Apple trees", "árboles de cereza", "ciruelas japonesas": the kind alone, and one of them. */
function asOne(text: string): string[] {
  const bare = text.replace(/^(arbol|arboles) de /, '').replace(/ trees?$/, '')
  const last = (end: RegExp, put: string) => bare.replace(end, put)
  const every = (end: RegExp, put: string) => bare.split(' ').map((word) => word.replace(end, put))
  return [
    bare,
    last(/ies$/, 'y'),
    last(/s$/, ''),
    last(/es$/, ''),
    every(/s$/, '').join(' '),
    every(/ces$/, 'z').join(' '),
  ]
}

function finder<Value extends string>(
  words: Words<Value>,
  values: readonly Value[],
  otherwise: (word: string) => string[] = () => []
) {
  const byWord = new Map(
    values.flatMap((value) => words[value].map((word) => [folded(word), value] as const))
  )
  return (text: string): Value | null => {
    const plain = folded(text).replace(/[’']/g, '').replace(/\s+/g, ' ')
    const spelled = [text, plain, ...otherwise(plain)].find((word) => byWord.has(word))
    return spelled === undefined ? null : (byWord.get(spelled) ?? null)
  }
}

/** The columns that a file of trees may have, and what people call them in English and Spanish. */

export const columns = [
  'block',
  'block_name',
  'row',
  'place',
  'species',
  'cultivar',
  'habit',
  'buds',
  'planted_year',
  'trunk_cm',
  'height_cm',
  'size',
  'asks_saw',
  'life',
  'hazard',
  'lat',
  'lon',
  'lat_lon',
] as const
export type Column = (typeof columns)[number]

const lengthUnits = ['mm', 'cm', 'm', 'in', 'ft'] as const
export type LengthUnit = (typeof lengthUnits)[number]
export const inCm: Record<LengthUnit, number> = { mm: 0.1, cm: 1, m: 100, in: 2.54, ft: 30.48 }

/** Which columns are lengths, and in which units somebody may have measured them. */
export const unitsOf: Partial<Record<Column, readonly LengthUnit[]>> = {
  trunk_cm: ['cm', 'mm', 'm', 'in'],
  height_cm: ['m', 'cm', 'ft', 'in'],
}

/** Without accents, capitals and signs (`plainHead`). The first that fits is meant. */
export const headings: Record<Column, readonly string[]> = {
  block: [
    'block',
    'plot',
    'section',
    'parcel',
    'field',
    'bloque',
    'parcela',
    'sector',
    'lote',
    'cuartel',
    'cuadro',
    'zona',
  ],
  block_name: [
    'block name',
    'name of block',
    'nombre del bloque',
    'nombre bloque',
    'nombre de la parcela',
  ],
  row: ['row', 'line', 'fila', 'hilera', 'linea', 'surco'],
  place: [
    'place',
    'tree',
    'position',
    'tree in row',
    'no',
    'number',
    'lugar',
    'arbol',
    'posicion',
    'puesto',
    'planta',
    'pie',
    'numero',
    'n',
  ],
  species: [
    'species',
    'fruit',
    'kind',
    'crop',
    'type',
    'tree type',
    'especie',
    'frutal',
    'fruta',
    'clase',
    'tipo',
    'cultivo',
  ],
  cultivar: ['cultivar', 'variety', 'variedad'],
  habit: [
    'habit',
    'buds',
    'bearing habit',
    'bearing',
    'habito',
    'fructificacion',
    'habito de fructificacion',
  ],
  buds: ['buds', 'fruit buds', 'yemas', 'yemas de fruto', 'yemas de flor'],
  planted_year: [
    'planted year',
    'year planted',
    'planted',
    'planting year',
    'year',
    'ano de plantacion',
    'ano plantacion',
    'plantado',
    'plantacion',
    'ano',
  ],
  trunk_cm: [
    'trunk',
    'trunk diameter',
    'diameter',
    'tronco',
    'diametro',
    'diametro del tronco',
    'diametro tronco',
    'grosor',
  ],
  height_cm: ['height', 'tree height', 'altura', 'alto'],
  size: ['size', 'size class', 'tamano'],
  asks_saw: ['asks saw', 'saw', 'needs saw', 'sierra', 'pide sierra', 'necesita sierra'],
  life: ['life', 'state', 'status', 'condition', 'vida', 'estado', 'situacion'],
  hazard: [
    'hazard',
    'hazards',
    'known hazards',
    'danger',
    'risk',
    'lines',
    'lines near',
    'power line',
    'power lines',
    'peligro',
    'peligros',
    'riesgo',
    'tendido',
    'cables',
    'lineas',
    'lineas cerca',
    'linea electrica',
  ],
  lat: ['lat', 'latitude', 'latitud'],
  lon: ['lon', 'lng', 'long', 'longitude', 'longitud'],
  lat_lon: [
    'lat lon',
    'latitude longitude',
    'latitud longitud',
    'coordinates',
    'coordinate',
    'coords',
    'coordenadas',
    'gps',
    'gps position',
    'posicion gps',
  ],
}

const unitWords: Record<LengthUnit, RegExp> = {
  mm: /\b(mm|milimetros?|millimet(re|er)s?)\b/,
  cm: /\b(cm|cms|centimetros?|centimet(re|er)s?)\b/,
  m: /\b(m|mts?|metros?|met(re|er)s?)\b/,
  in: /\b(in|inch|inches|pulgadas?|pulg)\b|"/,
  ft: /\b(ft|foot|feet|pies?)\b|'/,
}

/** Nothing but a unit, as stands below the names of some tables. */
export function isUnit(text: string): boolean {
  const bare = folded(text).replace(/[()[\].]/g, '')
  return lengthUnits.some((unit) => unitWords[unit].exec(bare)?.[0] === bare)
}

/** "Diámetro (cm)" is "diametro"; a unit is taken out where it follows something. */
export function plainHead(head: string): string {
  const words = folded(head)
  const bare = lengthUnits.reduce((text, unit) => text.replace(unitWords[unit], ' '), words)
  const kept = bare
    .replace(/[^a-z0-9]+/g, ' ')
    .trim()
    .replace(/ (en|in)$/, '')
  // "in" and "m" alone, or "pie" for a plant, are names and no units.
  return kept === '' ? words.replace(/[^a-z0-9]+/g, ' ').trim() : kept
}

export function unitInHead(head: string): LengthUnit | null {
  const [, ...rest] = folded(head).split(/[\s([/]+/)
  const after = rest.join(' ')
  // "height in cm": the unit is what stands last.
  const found = lengthUnits.filter((unit) => unitWords[unit].test(after))
  return found.find((unit) => unit !== 'in') ?? found[0] ?? null
}

/** Small letters without accents; what joins words is a space. */
export function folded(text: string): string {
  return text.normalize('NFD').replace(/\p{M}/gu, '').toLowerCase().replace(/_/g, ' ').trim()
}

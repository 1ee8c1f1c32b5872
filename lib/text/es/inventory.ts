import type { inventory as en } from '../en/inventory'
import { plural } from './plural'

export const inventory: typeof en = {
  title: 'Traer árboles',
  atLine: (line) => `Línea ${line}`,
  nothingBroughtIn: 'No se trajo nada. Corrige estas filas e intenta otra vez.',
  lineSays: (line, text) => `línea ${line} («${text}»)`,
  passed: {
    above: (lines) => `Encima de los nombres de las columnas, no se lee: ${lines}.`,
    units: (lines) => `Unidades bajo los nombres de las columnas: ${lines}.`,
    heads_again: (lines) => `Los nombres de las columnas otra vez, no se leen: ${lines}.`,
    total: (lines) => `Un total, no se lee: ${lines}.`,
    title: (lines) => `Un título o una nota y ningún árbol, no se lee: ${lines}.`,
  },
  blocksFromTitles:
    'Ninguna columna es el bloque: los títulos entre los árboles se toman como los bloques de lo que tienen debajo.',
  filledDown: (head, count) =>
    `${head} está vacío en ${plural(count, '1 fila', `${count} filas`)}, como las celdas combinadas: se toma de la fila de arriba.`,
  problems: {
    file_too_big: ({ found, allowed }) =>
      `El archivo tiene ${found}; ${allowed} es lo máximo. Divídelo por bloques.`,
    too_many_rows: ({ allowed }) =>
      `El archivo tiene más de ${allowed} filas, lo máximo de una vez. Divídelo por bloques.`,
    is_spreadsheet: () =>
      'Es el archivo propio de un programa de hojas de cálculo. Guárdalo allí como CSV y elige ese archivo.',
    not_text: () => 'Este archivo no es un texto. Guarda la tabla como CSV y elige ese archivo.',
    is_markup: () =>
      'Es una página web o XML, no una tabla. Ábrela en un programa de hojas de cálculo, guárdala como CSV y elige ese archivo.',
    not_geojson: () =>
      'Esto no es un GeoJSON de árboles. Tiene que ser una FeatureCollection (RFC 7946).',
    other_crs: ({ found }) =>
      `Las posiciones están en otro sistema (${found}). Guárdalo otra vez en grados, WGS 84.`,
    not_a_point: ({ found }) => `Un árbol es un punto; esto es: ${found}. Quítalo o dale uno.`,
    quote_not_closed: () => 'Unas comillas se abren y no se cierran. Ciérralas.',
    no_trees: () => 'No hay ninguna fila con un árbol. Añade una bajo los nombres de columna.',
    column_missing: ({ column }) =>
      `Ninguna columna es ${word(column)}. Elige cuál lo es, o añádela.`,
    column_twice: ({ column }) => `Dos columnas son ${word(column)}. Deja una.`,
    fields_miscounted: ({ found, allowed }) =>
      `Esta fila tiene ${found} campos, no ${allowed}. Busca un separador que falte o sobre.`,
    missing: ({ column }) => `${column} está vacío. Escríbelo.`,
    too_long: ({ column, allowed }) =>
      `${column} es demasiado largo. Escribe ${allowed} como mucho.`,
    control_character: ({ column }) =>
      `${column} lleva un carácter que no se puede mostrar. Escríbelo otra vez.`,
    not_one_of: ({ column, found, allowed }) =>
      `${column} no puede ser «${found}». Escribe uno de estos: ${allowed.split(', ').map(word).join(', ')}.`,
    not_a_whole_number: ({ column, found }) =>
      `${column} es «${found}», no un número entero. Escribe solo cifras.`,
    not_a_number: ({ column, found, allowed }) =>
      `${column} es «${found}», no un número. Escribe ${allowed}, sin signo de millares.`,
    not_a_year: ({ column, found, allowed }) =>
      `${column} es «${found}». Escribe el año con cuatro cifras, dentro de ${allowed}.`,
    out_of_range: ({ column, found, allowed }) =>
      `${column} es ${found}. Escribe algo dentro de ${allowed}.`,
    position_half: () => 'Solo hay uno de lat y lon. Escribe los dos o ninguno.',
    not_a_position: ({ column, found }) =>
      `${column} es «${found}». Escribe la latitud y luego la longitud, como 41.2042, -2.8177.`,
    position_far_away: ({ found }) =>
      `La posición (${found}) está lejos de los demás árboles. Revisa lat y lon.`,
    place_taken: ({ allowed }) =>
      `La línea ${allowed} tiene el mismo bloque, fila y lugar. Cambia una de las dos.`,
    block_name_differs: ({ found, allowed }) =>
      `El bloque se llama «${found}» aquí y de otro modo en la línea ${allowed}. Usa un solo nombre.`,
    habit_differs: ({ column, found, allowed }) =>
      `${column} es «${found}» aquí y otro en la línea ${allowed}. Una variedad tiene uno solo.`,
  },
}

/** As they may be written in the file, too (lib/domain/orchard/inventory-words.ts). */
const words: Record<string, string> = {
  row: 'la fila',
  place: 'el lugar',
  apple: 'manzano',
  pear: 'peral',
  plum: 'ciruelo',
  european_plum: 'ciruelo europeo',
  japanese_plum: 'ciruelo japonés',
  apricot: 'albaricoquero',
  peach: 'melocotonero',
  nectarine: 'nectarino',
  cherry: 'cerezo',
  sour_cherry: 'guindo',
  quince: 'membrillero',
  walnut: 'nogal',
  fig: 'higuera',
  persimmon: 'caqui',
  almond: 'almendro',
  pomegranate: 'granado',
  other: 'otro',
  base: 'base',
  middle: 'centro',
  tip: 'punta',
  spur: 'dardo',
  shoot: 'brote',
  both: 'ambos',
  unknown: 'desconocido',
  standing: 'en pie',
  dead: 'muerto',
  removed: 'arrancado',
  gap: 'hueco',
  young: 'joven',
  small: 'pequeño',
  medium: 'mediano',
  large: 'grande',
  yes: 'sí',
  no: 'no',
}

function word(code: string): string {
  return words[code] ?? code
}

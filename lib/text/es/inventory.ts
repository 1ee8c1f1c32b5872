import type { inventory as en } from '../en/inventory'

export const inventory: typeof en = {
  title: 'Traer árboles',
  atLine: (line) => `Línea ${line}`,
  nothingBroughtIn: 'No se trajo nada. Corrige estas filas e intenta otra vez.',
  problems: {
    file_too_big: ({ allowed }) =>
      `El archivo es demasiado grande (${allowed}). Divídelo por bloques.`,
    not_utf8: () => 'El archivo no es texto UTF-8. Guárdalo otra vez como CSV, UTF-8.',
    quote_not_closed: () => 'Unas comillas se abren y no se cierran. Ciérralas.',
    no_trees: () => 'No hay ninguna fila con un árbol. Añade una bajo los nombres de columna.',
    column_missing: ({ column }) => `Falta la columna ${column}. Añádela.`,
    column_unknown: ({ column, allowed }) =>
      `Ninguna columna se llama ${column}. Quítala o cámbiale el nombre${listed(allowed)}.`,
    column_twice: ({ column }) => `La columna ${column} está dos veces. Deja una.`,
    fields_miscounted: ({ found, allowed }) =>
      `Esta fila tiene ${found} campos, no ${allowed}. Busca una coma que falte o sobre.`,
    missing: ({ column }) => `${column} está vacío. Escríbelo.`,
    too_long: ({ column, allowed }) =>
      `${column} es demasiado largo. Escribe ${allowed} como mucho.`,
    control_character: ({ column }) =>
      `${column} lleva un carácter que no se puede mostrar. Escríbelo otra vez.`,
    not_one_of: ({ column, found, allowed }) =>
      `${column} no puede ser «${found}». Escribe uno de estos: ${allowed}.`,
    not_a_whole_number: ({ column, found }) =>
      `${column} es «${found}», no un número entero. Escribe solo cifras.`,
    not_a_number: ({ column, found }) =>
      `${column} es «${found}», no un número. Escribe cifras con punto.`,
    out_of_range: ({ column, found, allowed }) =>
      `${column} es ${found}. Escribe algo dentro de ${allowed}.`,
    position_half: () => 'Solo hay uno de lat y lon. Escribe los dos o ninguno.',
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

function listed(allowed: string): string {
  return allowed === '' ? '' : `: ${allowed}`
}

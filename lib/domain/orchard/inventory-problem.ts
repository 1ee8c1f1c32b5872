/** What can be wrong in a file of trees. Each says what to do about it: lib/text has the sentences. */

export const problemCodes = [
  'file_too_big',
  'too_many_rows',
  'is_spreadsheet',
  'not_text',
  'is_markup',
  'not_geojson',
  'other_crs',
  'not_a_point',
  'quote_not_closed',
  'no_trees',
  'column_missing',
  'column_twice',
  'fields_miscounted',
  'missing',
  'too_long',
  'control_character',
  'not_one_of',
  'not_a_whole_number',
  'not_a_number',
  'not_a_year',
  'out_of_range',
  'position_half',
  'not_a_position',
  'position_far_away',
  'place_taken',
  'block_name_differs',
  'habit_differs',
] as const
export type ProblemCode = (typeof problemCodes)[number]

export type InventoryProblem = {
  /** Of the file, or which feature of a GeoJSON. */
  line: number
  /** As the file calls it. Null where the whole row or file is meant. */
  column: string | null
  code: ProblemCode
  /** What stands there. */
  found: string
  /** What may stand there, or the line it quarrels with. */
  allowed: string
}

export function problemIn(
  said: Pick<InventoryProblem, 'line' | 'code'> & Partial<InventoryProblem>
): InventoryProblem {
  return { column: null, found: '', allowed: '', ...said }
}

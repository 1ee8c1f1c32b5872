/** What is wrong in a file of trees, row by row, and what to do about it. */

type Problem = { column: string; found: string; allowed: string }

export const inventory = {
  title: 'Bring in trees',
  atLine: (line: number) => `Line ${line}`,
  nothingBroughtIn: 'Nothing was brought in. Mend these rows and try again.',
  problems: {
    file_too_big: ({ allowed }: Problem) => `The file is too big (${allowed}). Split it by blocks.`,
    not_utf8: (_: Problem) => 'The file is not UTF-8 text. Save it again as CSV, UTF-8.',
    quote_not_closed: (_: Problem) => 'A quotation mark is opened and not closed. Close it.',
    no_trees: (_: Problem) => 'There is no row with a tree. Add one below the column names.',
    column_missing: ({ column }: Problem) => `The column ${column} is missing. Add it.`,
    column_unknown: ({ column, allowed }: Problem) =>
      `No column is called ${column}. Leave it out or rename it${listed(allowed)}.`,
    column_twice: ({ column }: Problem) => `The column ${column} is there twice. Keep one.`,
    fields_miscounted: ({ found, allowed }: Problem) =>
      `This row has ${found} fields, not ${allowed}. Look for a missing or extra comma.`,
    missing: ({ column }: Problem) => `${column} is empty. Write it.`,
    too_long: ({ column, allowed }: Problem) => `${column} is too long. Write ${allowed} at most.`,
    control_character: ({ column }: Problem) =>
      `${column} has a character that cannot be shown. Write it again.`,
    not_one_of: ({ column, found, allowed }: Problem) =>
      `${column} cannot be “${found}”. Write one of: ${allowed}.`,
    not_a_whole_number: ({ column, found }: Problem) =>
      `${column} is “${found}”, not a whole number. Write digits only.`,
    not_a_number: ({ column, found }: Problem) =>
      `${column} is “${found}”, not a number. Write digits with a point.`,
    out_of_range: ({ column, found, allowed }: Problem) =>
      `${column} is ${found}. Write something within ${allowed}.`,
    position_half: (_: Problem) => 'Only one of lat and lon is there. Write both or none.',
    position_far_away: ({ found }: Problem) =>
      `The position (${found}) is far from the other trees. Check lat and lon.`,
    place_taken: ({ allowed }: Problem) =>
      `Line ${allowed} has the same block, row and place. Change one of them.`,
    block_name_differs: ({ found, allowed }: Problem) =>
      `The block is called “${found}” here and otherwise in line ${allowed}. Use one name.`,
    habit_differs: ({ column, found, allowed }: Problem) =>
      `${column} is “${found}” here and otherwise in line ${allowed}. A cultivar has only one.`,
  },
}

function listed(allowed: string): string {
  return allowed === '' ? '' : `: ${allowed}`
}

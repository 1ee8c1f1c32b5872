/** What is wrong in a file of trees, row by row, and what to do about it. */

import { plural } from './plural'

type Problem = { column: string; found: string; allowed: string }

export const inventory = {
  title: 'Bring in trees',
  atLine: (line: number) => `Line ${line}`,
  nothingBroughtIn: 'Nothing was brought in. Mend these rows and try again.',
  lineSays: (line: number, text: string) => `line ${line} (“${text}”)`,
  /** What was done to a table before it was read; `lines` names where. */
  passed: {
    above: (lines: string) => `Above the names of the columns, passed over: ${lines}.`,
    units: (lines: string) => `Units below the names of the columns: ${lines}.`,
    heads_again: (lines: string) => `The names of the columns again, passed over: ${lines}.`,
    total: (lines: string) => `A total, passed over: ${lines}.`,
    title: (lines: string) => `A title or a note and no tree, passed over: ${lines}.`,
  },
  blocksFromTitles:
    'No column is the block: the titles between the trees are taken for the blocks of what stands below them.',
  filledDown: (head: string, count: number) =>
    `${head} is empty in ${plural(count, '1 row', `${count} rows`)}, as merged cells are: taken from the row above.`,
  problems: {
    file_too_big: ({ found, allowed }: Problem) =>
      `The file has ${found}; ${allowed} is the most. Split it by blocks.`,
    too_many_rows: ({ allowed }: Problem) =>
      `The file has more than ${allowed} rows, the most at once. Split it by blocks.`,
    is_spreadsheet: (_: Problem) =>
      'This is a spreadsheet program’s own file. Save it there as CSV, then choose that file.',
    not_text: (_: Problem) =>
      'This file is not a text. Save the table as CSV, then choose that file.',
    is_markup: (_: Problem) =>
      'This is a web page or XML, not a table. Open it in a spreadsheet program, save it as CSV, then choose that file.',
    not_geojson: (_: Problem) =>
      'This is not a GeoJSON of trees. It has to be a FeatureCollection (RFC 7946).',
    other_crs: ({ found }: Problem) =>
      `The positions are in another system (${found}). Save it again in degrees, WGS 84.`,
    not_a_point: ({ found }: Problem) =>
      `A tree is a point; this is: ${found}. Take it out, or give it one.`,
    quote_not_closed: (_: Problem) => 'A quotation mark is opened and not closed. Close it.',
    no_trees: (_: Problem) => 'There is no row with a tree. Add one below the column names.',
    column_missing: ({ column }: Problem) =>
      `No column is the ${column}. Choose which one it is, or add it.`,
    column_twice: ({ column }: Problem) => `Two columns are the ${column}. Keep one.`,
    fields_miscounted: ({ found, allowed }: Problem) =>
      `This row has ${found} fields, not ${allowed}. Look for a missing or extra separator.`,
    missing: ({ column }: Problem) => `${column} is empty. Write it.`,
    too_long: ({ column, allowed }: Problem) => `${column} is too long. Write ${allowed} at most.`,
    control_character: ({ column }: Problem) =>
      `${column} has a character that cannot be shown. Write it again.`,
    not_one_of: ({ column, found, allowed }: Problem) =>
      `${column} cannot be “${found}”. Write one of: ${allowed}.`,
    not_a_whole_number: ({ column, found }: Problem) =>
      `${column} is “${found}”, not a whole number. Write digits only.`,
    not_a_number: ({ column, found, allowed }: Problem) =>
      `${column} is “${found}”, not a number. Write ${allowed}, without a sign for thousands.`,
    not_a_year: ({ column, found, allowed }: Problem) =>
      `${column} is “${found}”. Write the year with four digits, within ${allowed}.`,
    out_of_range: ({ column, found, allowed }: Problem) =>
      `${column} is ${found}. Write something within ${allowed}.`,
    position_half: (_: Problem) => 'Only one of lat and lon is there. Write both or none.',
    not_a_position: ({ column, found }: Problem) =>
      `${column} is “${found}”. Write latitude, then longitude, such as 41.2042, -2.8177.`,
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

/** Cut wood, row by row: for leads. */

import { plural } from './plural'

export const brushRows = {
  title: 'Brush',
  down: (rows: number) => plural(rows, 'Cut wood lies in 1 row', `Cut wood lies in ${rows} rows`),
  noneDown: 'No cut wood lies anywhere',
  hauledRows: (rows: number) => plural(rows, '1 row hauled', `${rows} rows hauled`),
  trees: (lying: number, hauled: number) =>
    `${plural(lying, 'under 1 tree', `under ${lying} trees`)}, ${hauled} hauled`,
  allHauled: 'hauled',
  haul: (names: string) => `${names} at it`,
  nobody: 'nobody at it',
  goes: { burn: 'burn', chip: 'chip', bag: 'bag', pile: 'pile at the end of the row' },
  goesUnknown: 'Nobody has said where it goes',
  whereTo: 'Where does the wood go?',
  notSaid: 'Not said',
  wholeBlock: 'The same for all rows of the block',
  sick: (trees: string) =>
    `Diseased: ${trees}. Apart, bagged or burned; never chipped into the rows.`,
  keepAway: (trees: string) => `Stays: ${trees} near a hazard`,
  markHauled: 'It is hauled',
  markLying: 'It still lies there',
  pickRow: 'Open a row to say where its wood goes.',
  endHauling: (name: string) => `End ${name}’s row`,
  ofRow: (row: number) => `Brush in row ${row}`,
  handBack: 'Hand it back, nothing hauled',
  toRows: 'Rows and brush',
  haulsRow: (row: string) => `hauls brush, ${row}`,
}

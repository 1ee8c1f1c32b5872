/** Laying out a block from its corners. */

import { plural } from './plural'

const trees = (count: number) => plural(count, '1 tree', `${count} trees`)
const rows = (count: number) => plural(count, '1 row', `${count} rows`)

export const groundNew = {
  newTitle: 'New block',
  newNamed: (name: string) => `New block: ${name}`,
  newLead:
    'Walk to the corners, tap them on the map, or type them. In the order in which you meet them.',
  name: 'Name of the block',
  nameHint: 'As the crew says it.',
  code: 'Letters on its plates',
  codeHint: 'Up to 4. They are on every label.',
  species: 'What grows there',
  speciesHint: 'Change single trees afterwards.',
  cornersTitle: 'Corners',
  corner: (letter: string) => `Corner ${letter}`,
  cornerHint: 'Latitude, longitude',
  addCorner: 'Add a corner',
  removeCorner: (letter: string) => `Remove corner ${letter}`,
  hereIsCorner: 'I am at the next corner',
  finding: 'Finding where you stand. Stay there…',
  found: (within: string) => `Taken, to within ${within}.`,
  foundRough: (within: string) =>
    `Taken, but only to within ${within}. Stand still a minute and take it again, or drag it.`,
  noPlace: {
    insecure:
      'This page came without https, and the phone then tells nobody where it is. Type the corners, or open Rowcall by https.',
    denied: 'The phone may not say where it is. Allow it in its settings, or type the corners.',
    failed: 'The phone does not know where it is. Go under open sky, or type the corners.',
  },
  cornerFaults: {
    unreadable: 'Write latitude and longitude, like 41.20418, −2.81774.',
    out_of_range: 'Latitude is at most 90, longitude at most 180 degrees.',
    swapped: 'Latitude comes first. Write the second number before the first.',
  },
  outline: {
    too_few_corners: 'A block has at least three corners.',
    corner_twice: (a: string, b: string) => `${a} and ${b} are the same corner. Take one away.`,
    crosses_itself: (a: string, b: string) =>
      `The outline crosses itself: the side from ${a} runs over the side from ${b}.`,
    too_wide: (corner: string, far: string) =>
      `Corner ${corner} is ${far} from another. Look at its numbers again; a block is at most 5 km wide.`,
    no_area: 'The corners stand in one line. Move one.',
  },
  inOrder: 'Put the corners in order',
  seemsSwapped:
    'There is no orchard of this time zone where these corners are, but there is one with latitude and longitude swapped.',
  exchange: 'Swap latitude and longitude',
  farAway: (far: string) => `This is ${far} from your other trees. Are the corners right?`,

  pattern: 'How the trees stand',
  patterns: {
    rectangular: 'In rows',
    square: 'Square',
    offset: 'Offset rows',
    hexagonal: 'Hexagonal',
  },
  rowSpacing: 'Between rows',
  treeSpacing: 'Between trees in a row',
  treeSpacingOnly: 'Between trees',
  bearing: 'Rows run towards',
  bearingIs: (side: string) => `to the ${side}`,
  along: (a: string, b: string) => `Along ${a} to ${b}`,
  headland: 'Free at the edge',
  headlandHint: 'Room to turn, along every side.',
  firstRow: 'First row from the edge',
  firstRowHint: 'Empty: as the edge.',
  less: (what: string) => `Less: ${what}`,
  more: (what: string) => `More: ${what}`,
  range: (least: string, most: string) => `Write a number from ${least} to ${most}.`,
  wideRows: (typed: string, inFeet: string) =>
    `${typed} between rows is wide. If you counted in feet, it is ${inFeet}.`,
  narrowRows: (typed: string, inMetres: string) =>
    `${typed} between rows is narrow. If you counted in metres, it is ${inMetres}.`,
  numbers: 'Numbers',
  rowsFrom: 'Row 1 is in the',
  placesFrom: 'Place 1 is in the',
  serpentine: 'Count every other row back, as one walks them',

  tools: 'What a finger on the map does',
  toolCorners: 'Move corner',
  toolPlace: 'Leave a place empty',
  toolArea: 'Leave an area empty',
  clearEmpty: 'Fill all places again',
  mapLabel: (sum: string) => `Map of the new block. ${sum}`,
  mapEmpty: 'Type or walk to the first corner: the map begins there.',
  sums: { rows: 'rows', trees: 'trees', area: 'area', inRow: 'trees in a row' },
  fromTo: (least: number, most: number) => (least === most ? String(most) : `${least} to ${most}`),
  perHectare: (count: string) => `${count} trees per hectare`,
  perAcre: (count: string) => `${count} trees per acre`,
  bySpacing: 'By the spacing alone. Edges and headlands hold fewer.',
  hectares: (number: string) => `${number} ha`,
  acres: (number: string) => `${number} ac`,
  stayEmpty: (count: number) =>
    plural(
      count,
      '1 place stays empty. Add a tree there later.',
      `${count} places stay empty. Add trees there later.`
    ),
  make: (rowCount: number, treeCount: number) => `Make ${rows(rowCount)}, ${trees(treeCount)}`,
  layingOut: 'Working it out…',
  makeNothing: 'Make the block',
  lacks: {
    corners: 'Corners are missing: at least three are needed.',
    fault: 'Something above cannot be. It says what to write.',
    name: 'The block has no name or no letters yet.',
    codeTaken: 'Another block has these letters. Choose others.',
    no_room: 'No tree fits between the edges. Less room at the edge, or less between trees.',
    too_many_trees: (about: string, most: string) =>
      `That would be about ${about} trees. At most ${most} go into one block: look at the corners and the spacing.`,
  },
}

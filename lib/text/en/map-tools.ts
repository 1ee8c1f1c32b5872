/** What a lead does with the map: draw around trees, filter, find, and the same trees as a table. */

import { plural } from './plural'

export const mapTools = {
  draw: 'Draw around',
  drawing: 'Draw round the trees with a finger, or tap corners',
  undoStroke: 'Take back the last line',
  endDrawing: 'Drawn',

  filter: 'Filter',
  filterOn: (count: number) => plural(count, 'Filter, 1 choice', `Filter, ${count} choices`),
  filterTitle: 'Which trees?',
  blocks: 'Blocks',
  species: 'Kinds of trees',
  statuses: 'How they are',
  shows: (shown: string, all: string) => `Shows ${shown} of ${all} trees.`,
  showsAll: (all: string) => `Shows all ${all} trees.`,
  showAll: 'Show all',
  stillThere: 'What is filtered out stays on the map, faint. Rows and lines do not pick it.',
  shown: {
    unpruned: 'unpruned',
    held: 'in somebody’s hands',
    begun: 'half done',
    done: 'done',
    dealt: 'dealt',
    disease: 'flagged for disease',
    arborist: 'flagged for a licensed arborist',
    closed: 'closed',
  },

  find: 'Find a tree',
  findLabel: 'Block, row, tree',
  findHint: 'As on its tag: S 7 14. Or 7/14, or its number alone.',
  findGo: 'Show it',
  notRead: 'That names no tree. Write block, row and tree, like S 7 14.',
  noNumber: (no: number) => `No tree has the number ${no}.`,
  noneThere: (row: number, place: number) => `No block has a tree ${place} in row ${row}.`,
  inWhichBlock: 'In which block?',

  table: 'Trees',
  tableHint:
    'Arrows move, Enter opens a tree, space picks it, shift with arrows picks from one to another.',
  asTable: 'Table',
  show: 'Show',
  showTitle: 'What to show',
  sortBy: 'Sort by',
  columns: { tree: 'Tree', kind: 'Kind', status: 'Status', who: 'Who' },
  dealtTo: (names: string) => `for ${names}`,
  minutes: (names: string, duration: string) => `${names}, ${duration}`,

  photo: 'A photo to draw on',
  photoHint: 'If it helps. What you draw becomes a part of it.',
  drawOnPhoto: 'Draw along each limb that goes. Begin where the cut is: there it gets a bar.',
  photoToDrawOn: (strokes: number) =>
    `Photo of the tree, ${plural(strokes, '1 line', `${strokes} lines`)} drawn on it`,
  markAgain: 'Mark them anew',
  unmark: 'Take the mark off',

  dealtLeft: (count: number) => plural(count, '1 tree to go', `${count} trees to go`),
}

/** Bringing trees in from a file: what was understood, what would come in, and what became of it. */

import { plural } from './plural'

const trees = (count: number) => plural(count, '1 tree', `${count} trees`)
const rows = (count: number) => plural(count, '1 row', `${count} rows`)

export const bringIn = {
  title: 'Bring in trees',
  note: 'From a table or a GeoJSON file',
  lead: 'From a table or a GeoJSON file. Nothing comes in before you have seen it.',
  choose: 'Choose a file',
  chooseHint: 'CSV from any spreadsheet (comma, semicolon or tab), or GeoJSON. Or drop it here.',
  needs:
    'One line a tree. It needs the row; a block, a place, the kind of tree and all else if you have it.',
  paste: 'Or paste the table here',
  pasteHint: 'Copied from a spreadsheet, with the names of the columns above.',
  readPasted: 'Read this',
  pastedName: 'Pasted table',
  another: 'Another file',
  notRead: 'This file cannot be read. Choose it again.',
  kept: 'Kept on this device until it is brought in.',

  understood: (name: string, count: number) => `${name}: ${rows(count)}`,
  kinds: {
    geojson: 'a GeoJSON file',
    ',': 'separated by commas',
    ';': 'separated by semicolons',
    '\t': 'separated by tabs',
    '|': 'separated by vertical bars',
  },

  columnsTitle: 'What each column is',
  columnsLead: 'Proposed from the names. Change what is wrong.',
  noName: (place: number) => `Column ${place}, without a name`,
  such: (values: string) => `such as ${values}`,
  allEmpty: 'nothing in it',
  leftOut: 'Left out',
  unit: 'Measured in',
  units: { mm: 'millimetres', cm: 'centimetres', m: 'metres', in: 'inches', ft: 'feet' },
  columns: {
    block: 'Block',
    block_name: 'Name of the block',
    row: 'Row',
    place: 'Place in the row',
    species: 'Kind of tree',
    cultivar: 'Cultivar',
    habit: 'Bearing habit',
    buds: 'Where fruit buds sit',
    planted_year: 'Planted in',
    trunk_cm: 'Trunk diameter',
    height_cm: 'Height',
    size: 'Size',
    asks_saw: 'Asks for a saw',
    life: 'Standing, dead, removed or gap',
    hazard: 'Known hazard',
    lat: 'Latitude',
    lon: 'Longitude',
    lat_lon: 'Latitude and longitude in one',
  },
  noPlaces:
    'No column is the place: the trees of a row are counted from 1 in the order of the file.',
  noBlocks: 'No column is the block: all trees come into one.',
  onlyBlock: 'Its letters on the plate',
  writeCode: 'Write 1 to 4 letters or digits that no other block has.',

  speciesTitle: 'Which kind of tree is this?',
  speciesLead: 'The file has words that are not known here.',
  chooseSpecies: 'Not chosen yet',

  blocksTitle: 'Blocks',
  newBlock: 'new',
  code: 'Letters on the plate',
  where: 'Where it is',
  whereGrid: 'Not known: a plain grid',
  whereFirst: 'From its first tree',
  gridNote: 'Drawn as a plain grid, marked “not surveyed”.',
  firstLat: 'First tree, latitude',
  firstLon: 'First tree, longitude',
  bearing: 'Bearing of the rows (°)',
  bearingHint: 'The compass from tree 1 to tree 2; row 2 lies to the right.',
  rowSpacing: (unit: string) => `Between rows (${unit})`,
  treeSpacing: (unit: string) => `Between trees (${unit})`,
  writeWithin: (least: string, most: string) => `Write a number from ${least} to ${most}.`,
  positions: 'Positions are in the file.',

  comesIn: 'What comes in',
  newTrees: (count: number) => `${trees(count)} new`,
  newBlocks: (count: number) => plural(count, '1 new block', `${count} new blocks`),
  newCultivars: (count: number) => plural(count, '1 new cultivar', `${count} new cultivars`),
  sameTrees: (count: number) => `${trees(count)} here already, the same`,
  differing: (count: number) => `${trees(count)} here already, with other details`,
  notSurveyed: (count: number) => `${trees(count)} without a position`,
  stayOutside: (count: number) =>
    plural(count, '1 row that is wrong stays outside', `${count} rows that are wrong stay outside`),
  cultivarsTold: (count: number) =>
    plural(
      count,
      '1 cultivar has other fruit buds in the file',
      `${count} cultivars have other fruit buds in the file`
    ),
  cultivarsLead:
    'Where they sit decides what may be cut. They stay as they are, except those you tick.',
  changeCultivars: (count: number) =>
    plural(count, 'Change 1 cultivar', `Change ${count} cultivars`),

  wrongTitle: (count: number) => `${rows(count)} to mend`,
  wrongLead:
    'Mend them in the file, then choose it again. Until then nothing comes in, unless you leave them out.',
  leaveOut: (count: number) =>
    plural(
      count,
      'Leave out the 1 row that is wrong and bring in the others',
      `Leave out the ${count} rows that are wrong and bring in the others`
    ),
  leaveOutHint:
    'What is left out is on no map and in no list. Download it first; of two at one place the first comes in.',
  cannotLeaveOut:
    'The trees of a row are counted in the order of the file. A row left out would give its number to the next tree, so mend it.',
  atFeature: (no: number) => `Tree ${no} of the file`,
  moreWrong: (count: number) => `and ${rows(count)} more, in the file with what is wrong`,
  download: 'Download what is wrong',
  fileOfErrors: 'to-mend.csv',
  headLine: 'Line',
  headProblem: 'What is wrong, and what to do',
  tooMany: 'This is more than comes in at once. Split the file by blocks.',

  changesTitle: (count: number) => `${trees(count)} with other details`,
  changesLead: 'They stay as they are, except those you tick.',
  tickAll: 'Tick all',
  tickNone: 'Tick none',
  ticked: (count: number, of: number) => `${count} of ${of} ticked`,
  showMore: (count: number) => `Show ${count} more`,
  fields: {
    species: 'kind',
    cultivar: 'cultivar',
    plantedYear: 'planted in',
    trunkCm: 'trunk',
    heightCm: 'height',
    sizeClass: 'size',
    asksSaw: 'asks for a saw',
    life: 'state',
    position: 'position',
  },
  sizes: { young: 'young', small: 'small', medium: 'medium', large: 'large' },
  lives: { standing: 'standing', dead: 'dead', removed: 'removed', gap: 'gap' },
  nothing: 'not known',

  map: 'On the map',
  mapLabel: 'Map of what comes in. Arrow keys move between trees.',

  bringIn: (count: number) => `Bring in ${trees(count)}`,
  bringInAndChange: (count: number, changed: number) =>
    `Bring in ${trees(count)}, change ${changed}`,
  change: (count: number) => `Change ${trees(count)}`,
  bringing: 'Bringing in…',
  whyWrong: (count: number) => `${rows(count)} must be mended first.`,
  whySpecies: (_: number) => 'Say first which kind of tree each word is.',
  whyBlocks: (_: number) => 'Some fields of the blocks are not right yet.',
  whyNothing: (_: number) => 'Everything in this file is here already, the same.',
  whyTick: (_: number) => 'No tree is new. Tick which of the others are to change.',

  done: (count: number, changed: number) =>
    changed === 0
      ? `${trees(count)} brought in.`
      : `${trees(count)} brought in, ${changed} changed.`,
  onMap: 'See them on the map',
  nextRound: 'Rounds and shifts',
  moreTrees: 'Bring in more',
  hazardsTitle: (count: number) =>
    plural(count, '1 tree with a known hazard', `${count} trees with a known hazard`),
  hazardsLead:
    'The file says so; nobody has looked today. A flag closes the tree and what is near it until a licensed arborist has been.',
  flagThem: (count: number) => plural(count, 'Flag 1 tree', `Flag ${count} trees`),
  notNow: 'Flag none',
  flagged: (count: number) => plural(count, '1 tree is flagged.', `${count} trees are flagged.`),
}

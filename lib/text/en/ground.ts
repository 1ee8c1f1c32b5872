/** Blocks, rows and trees as a manager sets them up. */

import { groundNew } from './ground-new'
import { groundTrees } from './ground-trees'
import { plural } from './plural'

const trees = (count: number) => plural(count, '1 tree', `${count} trees`)
const rows = (count: number) => plural(count, '1 row', `${count} rows`)

export const ground = {
  title: 'Blocks and trees',
  roomNote: (blocks: number) =>
    blocks === 0 ? 'Lay out the first one' : plural(blocks, '1 block', `${blocks} blocks`),
  onlyManager: 'Only managers change the ground',
  onlyManagerNote: 'A lead leaves trees out of a round on the map, and deals them.',
  toMap: 'To the map',
  noBlocks: 'There is no block yet. Lay one out from its corners, or bring in a list of trees.',
  newBlock: 'Lay out a block',
  bringIn: 'Bring in a list',
  labels: 'Print labels',
  cultivars: 'Cultivars',
  open: 'Trees of this block',
  made: (name: string, count: number) => `${name} is laid out: ${trees(count)}.`,
  inRows: (inRows: number, standing: number) => `${rows(inRows)}, ${trees(standing)}`,
  gaps: (count: number) => plural(count, '1 place empty', `${count} places empty`),
  spacing: (between: string, along: string) => `${between} between rows, ${along} in the row`,

  north: 'N',
  ...groundNew,
  ...groundTrees,
}

/**
 * What a manager does to the ground meanwhile. Only what leaves height, place and species of the known trees
 * alone: ./ground.ts stays true, by which phones judge.
 */

import { plainJpeg } from '../supabase/scene'
import { aRow, aTree, type Moves } from './draw'

const corners = [
  [500, 500, 410_000_000, -980_000_000],
  [9500, 500, 410_000_000, -979_990_000],
  [500, 9500, 409_990_000, -980_000_000],
]

export const movesOfGround: Moves = {
  change_trees: ({ draw }) => ({
    trees: [...new Set([aTree(draw), aTree(draw)])],
    set: draw.of([{ planted: 1998 }, { trunkMm: 140, cultivar: null }]),
  }),
  bring_in_trees: ({ draw }) => ({
    ...{ blocks: [], cultivars: [] },
    trees: [{ block: 'B', row: 4, place: 1 + draw.number(9), species: 'pear' }],
  }),
  add_tree: ({ draw }) => ({ block: 2, row: 3, place: 1 + draw.number(4), species: 'apple' }),
  move_tree: ({ draw }) => ({ tree: aTree(draw) }),
  number_trees: ({ draw }) => {
    const { block } = aRow(draw)
    return { block, numbers: [block === 1 ? [21, 2, 1] : [41, 1, 1]] }
  },
  change_block: ({ draw }) => ({
    ...{ block: 2, rowSpacingM: 5, treeSpacingM: 4 },
    code: draw.of(['A', 'B']),
    name: draw.of(['All Sorts', 'The Mixed Piece']),
  }),
  // Never one without a history: its trees would be gone.
  remove_block: ({ state }) => (state.work[1] ? { block: 1 } : null),
  write_cultivar: ({ draw }) => ({
    cultivar: draw.of([null, 1]),
    species: 'apple',
    name: draw.of(['Old Keeper', 'Late Keeper', 'Stripe']),
    habit: 'spur',
  }),
  remove_cultivar: ({ draw }) => ({ cultivar: 1 + draw.number(4) }),
  place_aerial: ({ draw }) => ({
    points: corners,
    opacity: 40 + draw.number(50),
    jpeg: draw.of([plainJpeg, null]),
  }),
  remove_aerial: () => ({}),
}

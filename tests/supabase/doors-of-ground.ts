/** The doors by which a manager changes the ground: trees, blocks, cultivars. */

import { always, nothing, type Use } from './door'
import { aerialPoints, plainJpeg } from './scene'

/** Nobody holds it, nothing is recorded there. */
const tree = 14

export const doorsOfGround: Record<string, Use[]> = {
  place_aerial: [
    {
      right: 'manager',
      args: () => ({ p_points: aerialPoints, p_opacity: 70, p_jpeg: plainJpeg }),
      outcome: always,
    },
  ],
  remove_aerial: [{ right: 'manager', args: nothing, outcome: always }],
  read_aerial: [{ right: 'lead', args: nothing, outcome: always }],
  change_trees: [
    {
      right: 'manager',
      args: () => ({ p_trees: [tree], p_set: { size: 'small', life: 'dead' } }),
      outcome: always,
    },
    {
      as: 'of Bo',
      right: 'manager',
      args: () => ({ p_trees: [2], p_set: { life: 'dead' } }),
      outcome: {
        else: 'ok',
        open: 'refused: trees_in_progress',
        stopped: 'refused: trees_in_progress',
      },
    },
  ],
  add_tree: [
    {
      right: 'manager',
      args: () => ({ p_block: 1, p_row: 9, p_place: 1, p_species: 'apple' }),
      outcome: always,
    },
  ],
  move_tree: [
    {
      right: 'manager',
      args: () => ({ p_tree: tree, p_lat_e7: 410_000_000, p_lon_e7: -28_000_000 }),
      outcome: always,
    },
  ],
  number_trees: [
    {
      right: 'manager',
      args: () => ({ p_block: 1, p_numbers: [[tree, 9, 1]] }),
      outcome: always,
    },
  ],
  change_block: [
    {
      right: 'manager',
      args: () => ({
        p_block: 1,
        p_code: 'U',
        p_name: 'Upper',
        p_row_spacing_m: 5,
        p_tree_spacing_m: 4,
      }),
      outcome: always,
    },
  ],
  remove_block: [
    { as: 'without a record', right: 'manager', args: () => ({ p_block: 2 }), outcome: always },
    {
      as: 'with flags',
      right: 'manager',
      args: () => ({ p_block: 1 }),
      outcome: { else: 'refused: block_has_history' },
    },
  ],
  write_cultivar: [
    {
      right: 'manager',
      args: () => ({ p_species: 'apple', p_name: 'Old Keeper', p_habit: 'spur' }),
      outcome: always,
    },
  ],
  remove_cultivar: [{ right: 'manager', args: () => ({ p_cultivar: 1 }), outcome: always }],
  leave_out_trees: [
    {
      right: 'lead',
      args: () => ({ p_trees: [tree], p_reason: 'Wet ground' }),
      outcome: always,
    },
  ],
}

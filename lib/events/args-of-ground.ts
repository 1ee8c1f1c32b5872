/** What the commands take that change the ground itself: trees, blocks and cultivars. */

import * as shape from '@/lib/util/shape'

import { number, orNull, text } from './shapes'

const size = shape.oneOf(['young', 'small', 'medium', 'large'])
const life = shape.oneOf(['standing', 'dead', 'removed', 'gap'])
const habit = shape.oneOf(['spur', 'shoot', 'both', 'unknown'])
const buds = shape.oneOf(['base', 'middle', 'tip', 'unknown'])

/** What is not named stays as it is; null says that it is not known. */
const treesSet = shape.object({
  species: shape.optional(text),
  cultivar: shape.optional(shape.nullable(number)),
  size: shape.optional(shape.nullable(size)),
  planted: shape.optional(shape.nullable(number)),
  heightCm: shape.optional(shape.nullable(number)),
  trunkMm: shape.optional(shape.nullable(number)),
  asksSaw: shape.optional(shape.boolean),
  life: shape.optional(life),
})

export const argsOfGround = {
  change_trees: shape.object({ trees: shape.array(number), set: treesSet }),
  add_tree: shape.object({
    block: number,
    row: number,
    place: number,
    species: text,
    cultivar: orNull(number),
    size: orNull(size),
    planted: orNull(number),
    latE7: orNull(number),
    lonE7: orNull(number),
  }),
  move_tree: shape.object({ tree: number, latE7: orNull(number), lonE7: orNull(number) }),
  number_trees: shape.object({
    block: number,
    numbers: shape.array(shape.tuple([number, number, number])),
  }),
  change_block: shape.object({
    block: number,
    code: text,
    name: text,
    rowSpacingM: shape.number,
    treeSpacingM: shape.number,
    bearingDeg: orNull(shape.number),
    taggedEnd: shape.withDefault(shape.oneOf(['low', 'high']), 'low'),
  }),
  remove_block: shape.object({ block: number }),
  write_cultivar: shape.object({
    cultivar: orNull(number),
    species: text,
    name: text,
    habit: shape.withDefault(habit, 'unknown'),
    buds: shape.withDefault(buds, 'unknown'),
  }),
  remove_cultivar: shape.object({ cultivar: number }),
  /** Null: back in. */
  leave_out_trees: shape.object({ trees: shape.array(number), reason: orNull(text) }),
}

/** Coordinates that can be read out over the telephone. */

import type { Position } from '@/lib/domain/orchard/types'
import { myTree, type View } from '@/lib/hooks'

export type WhereWeAre =
  | { of: 'tree'; tree: number; position: Position }
  | { of: 'block'; block: string; position: Position }

/** Of the tree I am at where it was surveyed, else of the first row of its block, else of any block. */
export function whereWeAre(view: View): WhereWeAre | null {
  const mine = myTree(view)
  const tree = mine.state === 'none' ? undefined : view.ground.trees.get(mine.tree ?? 0)
  if (tree?.position) return { of: 'tree', tree: tree.no, position: tree.position }
  const blocks = [...view.ground.blocks.values()].filter(({ firstTree }) => firstTree !== null)
  const block = blocks.find(({ no }) => no === tree?.block) ?? blocks[0]
  return block?.firstTree ? { of: 'block', block: block.name, position: block.firstTree } : null
}

/** Five digits are a metre. A plain minus, as it is said and typed. */
export function inDegrees({ lat, lon }: Position): string {
  return `${lat.toFixed(5)}, ${lon.toFixed(5)}`
}

export type Compass = Record<'north' | 'south' | 'east' | 'west', string>

/** "41.12345 north, 3.12345 west": over the telephone a minus is lost. */
export function saidDegrees({ lat, lon }: Position, compass: Compass): string {
  const northOrSouth = lat < 0 ? compass.south : compass.north
  const eastOrWest = lon < 0 ? compass.west : compass.east
  return `${Math.abs(lat).toFixed(5)} ${northOrSouth}, ${Math.abs(lon).toFixed(5)} ${eastOrWest}`
}

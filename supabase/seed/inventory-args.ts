/** An inventory as the function that brings it in names its arguments. */

import type { Inventory } from '@/lib/domain/orchard/inventory'
import { inventoryArgs as argsOf } from '@/lib/domain/orchard/inventory-args'

export type InventoryArgs = { p_blocks: object[]; p_cultivars: object[]; p_trees: object[] }

export function inventoryArgs(inventory: Inventory): InventoryArgs {
  const { blocks, cultivars, trees } = argsOf(inventory)
  return { p_blocks: blocks, p_cultivars: cultivars, p_trees: trees }
}

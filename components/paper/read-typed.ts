/** What a lead types from a sheet, read as people write it: "s7 14", "9.40". */

import { readTag } from '@/lib/domain/orchard/read-tag'
import { type Block, stands, type Tree } from '@/lib/domain/orchard/types'

/** "9:40", "9.40", "940", "9h40", "9" or "2:10 pm" → "09:40". Null: not a time. */
export function clockTyped(typed: string): string | null {
  const found = /^(\d{1,2})(?:\s*[:.h,]?\s*(\d{2}))?\s*([ap])?\.?m?\.?$/i.exec(typed.trim())
  if (!found) return null
  const half = found[3]?.toLowerCase()
  const said = Number(found[1])
  const minute = Number(found[2] ?? 0)
  if (half !== undefined && (said < 1 || said > 12)) return null
  const hour = half === undefined ? said : (said % 12) + (half === 'p' ? 12 : 0)
  if (hour > 23 || minute > 59) return null
  return `${two(hour)}:${two(minute)}`
}

/** A place without its block is in the block that was typed last, or in the only one. */
export function treeTyped(
  typed: string,
  {
    blocks,
    trees,
    lastBlock,
  }: { blocks: readonly Block[]; trees: readonly Tree[]; lastBlock: number | null }
): Tree | null {
  const said = readTag(typed, blocks)
  const only = blocks.length === 1 ? (blocks[0]?.no ?? null) : null
  if (said?.kind === 'number')
    return trees.find((tree) => tree.no === said.no && stands(tree)) ?? null
  if (said?.kind !== 'place') return null
  const block = said.block ?? lastBlock ?? only
  const there = (tree: Tree) =>
    tree.block === block && tree.row === said.row && tree.place === said.place
  return trees.find((tree) => there(tree) && stands(tree)) ?? null
}

/** "60", "60 %" → 60. Null: not 1 to 99. */
export function shareTyped(typed: string): number | null {
  const found = /^(\d{1,2})\s*%?$/.exec(typed.trim())
  const share = Number(found?.[1] ?? 0)
  return share > 0 ? share : null
}

function two(number: number): string {
  return String(number).padStart(2, '0')
}

'use client'

import type { Block, Cultivar, Tree } from '@/lib/domain/orchard/types'
import { useNow, useSelect } from '@/lib/hooks'
import { treeTag } from '@/lib/text/tree-name'

export type TreeFacts = {
  tree: Tree
  block: Block
  cultivar: Cultivar | null
  /** "S 7·14" */
  tag: string
}

/** A tree by its number; null when the orchard has none with it. */
export function useTree(no: number | null): TreeFacts | null {
  const ground = useSelect((view) => view.ground)
  const sheet = useSelect((view) => view.sheet)
  const tree = no === null ? undefined : ground.trees.get(no)
  const block = tree && ground.blocks.get(tree.block)
  if (!tree || !block) return null
  const cultivar = sheet?.cultivars.find((one) => one.no === tree.cultivar) ?? null
  return { tree, block, cultivar, tag: treeTag({ ...tree, block: block.code }) }
}

/** Which year it is at the orchard, near enough to reckon an age. */
export function useThisYear(): number {
  const now = useNow(3_600_000)
  const startsAt = useSelect((view) => Object.values(view.state?.shifts ?? {})[0]?.startsAt)
  return (now ?? new Date(startsAt ?? 0)).getUTCFullYear()
}

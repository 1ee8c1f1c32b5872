'use client'

import type { Refusal } from '@/lib/events/answer'
import { nameOf, useSelect } from '@/lib/hooks'
import { refusalInWords } from '@/lib/text/refusal'
import { treeTag } from '@/lib/text/tree-name'
import { useWords } from '../layout/Words'

/** Says a refusal to who uses this device; `take` is the tree to take instead. */
export function useRefusalWords(): (refusal: Refusal, take?: number) => string {
  const words = useWords()
  const names = useSelect((view) => view.names)
  const unsent = useSelect((view) => view.unsent)
  const tools = useSelect((view) => view.state?.tools)
  const tagOf = useTagOf()
  return (refusal, take) =>
    refusalInWords(words, refusal, {
      tree: tagOf,
      person: (id) => nameOf({ names, unsent }, id) ?? words.common.somebody,
      tool: (no) => tools?.[no]?.label ?? String(no),
      take: take === undefined ? undefined : tagOf(take),
    })
}

/** The tag of a tree by its number; the number itself while nobody knows the tree. */
export function useTagOf(): (tree: number) => string {
  const ground = useSelect((view) => view.ground)
  return (no) => {
    const tree = ground.trees.get(no)
    const block = tree && ground.blocks.get(tree.block)
    return tree && block ? treeTag({ ...tree, block: block.code }) : String(no)
  }
}

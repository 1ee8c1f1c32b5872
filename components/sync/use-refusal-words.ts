'use client'

import type { Refusal } from '@/lib/events/answer'
import { nameOf, useSelect } from '@/lib/hooks'
import { treeTag } from '@/lib/text/tree-name'
import { useFormat } from '../layout/use-format'
import { useWords } from '../layout/Words'
import { type RefusalAbout, refusalWords } from './refusal-words'

/** Says a refusal to who uses this device. */
export function useRefusalWords(): (refusal: Refusal, about?: RefusalAbout) => string {
  const words = useWords()
  const nameOf = useNameOf()
  const tools = useSelect((view) => view.state?.tools)
  const blocks = useSelect((view) => view.ground.blocks)
  const tree = useTagOf()
  const format = useFormat()
  return (refusal, about) =>
    refusalWords(
      words,
      refusal,
      {
        tree,
        person: nameOf,
        tool: (no) => tools?.[no]?.label ?? String(no),
        block: (no) => blocks.get(no)?.code ?? '',
        clock: format.clock,
      },
      about
    )
}

/** The name of a person; "somebody" when it is not read yet, or forgotten. */
export function useNameOf(): (personId: string) => string {
  const words = useWords()
  const names = useSelect((view) => view.names)
  const unsent = useSelect((view) => view.unsent)
  return (id) => nameOf({ names, unsent }, id) ?? words.claim.somebody
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

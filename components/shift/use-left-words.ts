'use client'

import { useSelect } from '@/lib/hooks'
import { holderIn } from '../crew/claims'
import { useLeadWords } from '../crew/use-lead-words'
import { useNameOf, useTagOf } from '../sync/use-refusal-words'
import { useRowTag } from '../sync/use-row-tag'
import type { LeftKind } from './leaving'

export type LeftThing = { id: string; words: string }

type LeftWords = { title: string; picks: readonly string[]; things: LeftThing[] }

/** How each list of what is left open is headed, what usually explains it, and its lines. */
export function useLeftWords(): Record<LeftKind, (ids: readonly string[]) => LeftWords> {
  const { shift: text } = useLeadWords()
  const nameOf = useNameOf()
  const tagOf = useTagOf()
  const rowTag = useRowTag()
  const claims = useSelect((view) => view.state?.claims)
  const tools = useSelect((view) => view.state?.tools)

  const claimWords = (id: string) => {
    const claim = claims?.[id]
    const holder = claim && holderIn(claim)
    const at = claim?.row ? rowTag(claim.row) : claim?.tree == null ? null : tagOf(claim.tree)
    return [at, holder && nameOf(holder)].filter(Boolean).join(', ')
  }
  const toolWords = (no: string) => {
    const tool = tools?.[no]
    return [tool?.label ?? no, tool?.heldBy ? nameOf(tool.heldBy) : null].filter(Boolean).join(', ')
  }
  const listed = (ids: readonly string[], wordsOf: (id: string) => string) =>
    ids.map((id) => ({ id, words: wordsOf(id) }))
  return {
    people: (ids) => ({
      title: text.notSignedOut(ids.length),
      picks: Object.values(text.whyPeople),
      things: listed(ids, nameOf),
    }),
    claims: (ids) => ({
      title: text.treesHeld(ids.length),
      picks: Object.values(text.whyClaims),
      things: listed(ids, claimWords),
    }),
    tools: (ids) => ({
      title: text.toolsOut(ids.length),
      picks: text.whyTools,
      things: listed(ids, toolWords),
    }),
  }
}

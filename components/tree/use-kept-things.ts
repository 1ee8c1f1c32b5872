'use client'

import { type Kept, useSelect } from '@/lib/hooks'
import { useFormat } from '../layout/use-format'
import { useWords } from '../layout/Words'
import type { KeptThing } from '../sync/KeptList'
import { useTagOf } from '../sync/use-refusal-words'
import { type KeptWords, keptWords } from './kept-words'

/** What waits on this device, in the order in which it was done; a tree begun without signal is among it. */
export function useKeptThings(): KeptThing[] {
  const { claim, unsent } = useWords()
  const format = useFormat()
  const tagOf = useTagOf()
  const say = useKeptWords()
  const items = useSelect((view) => view.unsent)
  const begun = useSelect((view) => view.begun)
  const clock = (at: string) => format.clock(new Date(at))
  const kept = items.map((item): KeptThing & { at: string } => {
    const { icon, title, detail } = say(item)
    const note = [clock(item.at), detail].filter(Boolean).join(', ')
    return { id: item.command.id, icon, title, note, at: item.at }
  })
  const waiting: (KeptThing & { at: string })[] = begun
    ? [
        {
          id: 'begun',
          icon: 'clock',
          title: unsent.begunTree(tagOf(begun.tree)),
          note: `${clock(begun.at)}. ${claim.beginWhy}`,
          at: begun.at,
        },
      ]
    : []
  return [...kept, ...waiting].toSorted((a, b) => a.at.localeCompare(b.at))
}

export function useKeptWords(): (kept: Kept) => KeptWords {
  const words = useWords()
  const tag = useTagOf()
  const tools = useSelect((view) => view.state?.tools)
  return ({ command }) =>
    keptWords(words, command, { tag, tool: (no) => tools?.[no]?.label ?? String(no) })
}

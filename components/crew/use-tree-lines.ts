'use client'

import { useMemo } from 'react'

import { stands } from '@/lib/domain/orchard/types'
import { looksOf, useNow, useSelect } from '@/lib/hooks'
import { useFormat } from '../layout/use-format'
import { useLanguage } from '../layout/Words'
import { useNameOf } from '../sync/use-refusal-words'
import { minutesSince } from './crew-order'
import { linesOf, type Sort, type TreeLine } from './tree-table'
import { useLeadWords } from './use-lead-words'
import { firstName } from './use-pair-name'

/** Every standing tree as a line: worked out again only when something of it changes. */
export function useTreeLines(dimmed: ReadonlySet<number>, sort: Sort): TreeLine[] {
  const language = useLanguage()
  const trees = useSelect((view) => view.sheet?.trees)
  const blocks = useSelect((view) => view.sheet?.blocks)
  const looks = useSelect(looksOf)
  const whoAt = useWhoAt()
  return useMemo(
    () =>
      linesOf((trees ?? []).filter(stands), {
        looks,
        dimmed,
        blocks: blocks ?? [],
        whoOf: (tree) => whoAt.get(tree) ?? '',
        sort,
        language,
      }),
    [trees, blocks, looks, dimmed, whoAt, sort, language]
  )
}

/** "Ann, 12 min" for who is at a tree; "for Fenna" for whom it is kept. */
function useWhoAt(): ReadonlyMap<number, string> {
  const { mapTools } = useLeadWords()
  const format = useFormat()
  const nameOf = useNameOf()
  const claims = useSelect((view) => view.state?.claims)
  const deals = useSelect((view) => view.state?.deals)
  const names = useSelect((view) => view.names)
  const now = useNow(60_000)
  // biome-ignore lint/correctness/useExhaustiveDependencies: `names` is what `nameOf` reads
  return useMemo(() => {
    const namesOf = (ids: readonly string[]) => format.list(ids.map((id) => firstName(nameOf(id))))
    const kept = Object.entries(deals ?? {}).map(
      ([tree, to]) => [Number(tree), mapTools.dealtTo(namesOf(to))] as const
    )
    const held = Object.values(claims ?? {}).flatMap(({ tree, people, openedAt }) => {
      if (tree === null) return []
      const minutes = now ? minutesSince(openedAt, now) : 0
      const who = mapTools.minutes(namesOf(Object.keys(people)), format.duration(minutes))
      return [[tree, who] as const]
    })
    return new Map([...kept, ...held])
  }, [claims, deals, names, now, mapTools, format])
}

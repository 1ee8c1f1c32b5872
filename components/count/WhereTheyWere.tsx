'use client'

import { useMemo } from 'react'

import { looksOf, useSelect } from '@/lib/hooks'
import { routes } from '@/lib/routes'
import { useLeadWords } from '../crew/use-lead-words'
import { useMapWords } from '../crew/use-map-words'
import { useGo } from '../layout/use-go'
import { OrchardMap } from '../map/OrchardMap'
import type { Person } from './counted'

const none: ReadonlySet<number> = new Set()

/** The last trees of who is missing, on the map. */
export function WhereTheyWere({ people }: { people: readonly Person[] }) {
  const { count: text } = useLeadWords()
  const go = useGo()
  const sheet = useSelect((view) => view.sheet)
  const looks = useSelect(looksOf)
  const words = useMapWords(none)
  const key = people.flatMap(({ tree }) => (tree === null ? [] : [tree])).join()
  const trees = useMemo(() => new Set(key === '' ? [] : key.split(',').map(Number)), [key])
  const lookAt = useMemo(() => firstOf(trees), [trees])
  if (!sheet || lookAt === null) return null
  return (
    <section className="count-map" aria-label={text.where}>
      <h2>{text.where}</h2>
      <div className="map-box">
        <OrchardMap
          trees={sheet.trees}
          blocks={sheet.blocks}
          looks={looks}
          selected={trees}
          lookAt={lookAt}
          words={words}
          onTap={({ no }) => go.push(routes.map(no))}
        />
      </div>
    </section>
  )
}

function firstOf(trees: ReadonlySet<number>): { tree: number } | null {
  const [tree] = trees
  return tree === undefined ? null : { tree }
}

'use client'

import { type ReactNode, useState } from 'react'

import { Button } from '../ui/Button'
import { FilterCount } from './FilterCount'
import { FilterSheet } from './FilterSheet'
import { FindTree } from './FindTree'
import { useLeadWords } from './use-lead-words'
import type { MapFilterNow } from './use-map-filter'

type MapLookProps = {
  filter: MapFilterNow
  onFind: (tree: number) => void
  /** What else can be shown. */
  more: ReactNode
  /** What is said about what is shown. */
  children: ReactNode
}

/** What of the orchard is looked at: a filter, which says what it leaves, and a tree that is searched for. */
export function MapLook({ filter, onFind, more, children }: MapLookProps) {
  const { mapTools } = useLeadWords()
  const [over, setOver] = useState<'filter' | 'find' | null>(null)
  const close = () => setOver(null)
  return (
    <div className="lead-map-look">
      <Button icon="eye" onPress={() => setOver('filter')}>
        {filter.choices > 0 ? mapTools.filterOn(filter.choices) : mapTools.filter}
      </Button>
      <Button icon="map" onPress={() => setOver('find')}>
        {mapTools.find}
      </Button>
      {more}
      {filter.choices > 0 && (
        <div className="filter-on">
          <FilterCount now={filter} />
          <Button kind="quiet" onPress={filter.clear}>
            {mapTools.showAll}
          </Button>
        </div>
      )}
      {children}
      <FilterSheet open={over === 'filter'} now={filter} onClose={close} />
      <FindTree open={over === 'find'} onFound={onFind} onClose={close} />
    </div>
  )
}

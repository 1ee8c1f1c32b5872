'use client'

import { useMemo } from 'react'

import { looksOf, useSelect } from '@/lib/hooks'
import { MapList } from '../map/MapList'
import { OrchardMap } from '../map/OrchardMap'
import { Button } from '../ui/Button'
import { Segmented } from '../ui/Segmented'
import { NoTrees } from './NoTrees'
import type { DealingNow } from './use-dealing'
import { useLeadWords } from './use-lead-words'
import { useMapWords } from './use-map-words'

export type MapShow = 'map' | 'list'

type MapWorkProps = {
  show: MapShow
  onShow: (show: MapShow) => void
  dealing: DealingNow
  /** The tree beside the map. */
  open: number | null
  onTree: (tree: number) => void
}

/** The orchard as a map or, for ears and keys, as a list by row; and how to begin picking. */
export function MapWork({ show, onShow, dealing, open, onTree }: MapWorkProps) {
  const { leadMap } = useLeadWords()
  const sheet = useSelect((view) => view.sheet)
  const looks = useSelect(looksOf)
  const words = useMapWords(dealing.picked)
  const selected = useMemo(
    () => (dealing.isPicking ? dealing.picked : new Set(open === null ? [] : [open])),
    [dealing.isPicking, dealing.picked, open]
  )
  if (!sheet || sheet.trees.length === 0)
    return (
      <div className="lead-map-empty">
        <h1>{leadMap.title}</h1>
        <NoTrees />
      </div>
    )

  const { trees, blocks } = sheet
  return (
    <div className="lead-map">
      <h1 className="sr">{leadMap.title}</h1>
      {show === 'map' ? (
        <OrchardMap
          {...{ trees, blocks, looks, selected, words }}
          onTap={({ no }) => onTree(no)}
          onTapRow={dealing.pickRow}
        />
      ) : (
        <div className="lead-map-list">
          <h2 className="sr">{leadMap.asList}</h2>
          <MapList {...{ trees, blocks, looks, words }} onTap={({ no }) => onTree(no)} />
        </div>
      )}
      <div className="lead-map-tools">
        <Segmented
          label={leadMap.show}
          hideLabel
          options={[
            { value: 'map', label: leadMap.asMap },
            { value: 'list', label: leadMap.asList },
          ]}
          value={show}
          onChange={onShow}
        />
        {!dealing.isPicking && (
          <Button icon="pick" onPress={dealing.start}>
            {leadMap.pick}
          </Button>
        )}
      </div>
    </div>
  )
}

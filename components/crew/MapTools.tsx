'use client'

import { useState } from 'react'

import { Button } from '../ui/Button'
import { Segmented } from '../ui/Segmented'
import { FilterCount } from './FilterCount'
import { FilterSheet } from './FilterSheet'
import { FindTree } from './FindTree'
import type { MapShow } from './MapWork'
import type { DealingNow } from './use-dealing'
import { useLeadWords } from './use-lead-words'
import type { MapFilterNow } from './use-map-filter'

type MapToolsProps = {
  show: MapShow
  onShow: (show: MapShow) => void
  dealing: DealingNow
  filter: MapFilterNow
  onFind: (tree: number) => void
}

/** Map or table, what is shown of it, and how to begin picking. While somebody draws, what belongs to that. */
export function MapTools({ show, onShow, dealing, filter, onFind }: MapToolsProps) {
  const { leadMap, mapTools } = useLeadWords()
  const [over, setOver] = useState<'filter' | 'find' | null>(null)
  const close = () => setOver(null)

  if (dealing.isDrawing && show === 'map')
    return (
      <div className="lead-map-tools">
        <Button icon="check" onPress={dealing.endDrawing}>
          {mapTools.endDrawing}
        </Button>
        {dealing.corners.length > 0 && (
          <Button icon="undo" onPress={dealing.undoStroke}>
            {mapTools.undoStroke}
          </Button>
        )}
      </div>
    )
  return (
    <div className="lead-map-tools">
      {filter.choices > 0 && (
        <div className="filter-on">
          <FilterCount now={filter} />
          <Button kind="quiet" onPress={filter.clear}>
            {mapTools.showAll}
          </Button>
        </div>
      )}
      <Segmented
        label={leadMap.show}
        hideLabel
        options={[
          { value: 'map', label: leadMap.asMap },
          { value: 'table', label: mapTools.asTable },
        ]}
        value={show}
        onChange={onShow}
      />
      {show === 'map' && (
        <Button icon="lasso" onPress={dealing.draw}>
          {mapTools.draw}
        </Button>
      )}
      {!dealing.isPicking && (
        <Button icon="pick" onPress={dealing.start}>
          {leadMap.pick}
        </Button>
      )}
      <Button icon="eye" onPress={() => setOver('filter')}>
        {filter.choices > 0 ? mapTools.filterOn(filter.choices) : mapTools.filter}
      </Button>
      <Button icon="map" onPress={() => setOver('find')}>
        {mapTools.find}
      </Button>
      <FilterSheet open={over === 'filter'} now={filter} onClose={close} />
      <FindTree open={over === 'find'} onFound={onFind} onClose={close} />
    </div>
  )
}

'use client'

import { Button } from '../ui/Button'
import { Segmented } from '../ui/Segmented'
import type { MapShow } from './MapWork'
import type { DealingNow } from './use-dealing'
import { useLeadWords } from './use-lead-words'

type MapToolsProps = {
  show: MapShow
  onShow: (show: MapShow) => void
  dealing: DealingNow
}

/** Map or table, and how to begin picking; at the thumbs. While somebody draws, what belongs to that. */
export function MapTools({ show, onShow, dealing }: MapToolsProps) {
  const { leadMap, mapTools } = useLeadWords()

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
    </div>
  )
}

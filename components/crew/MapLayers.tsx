'use client'

import { useState } from 'react'

import { useWords } from '../layout/Words'
import { Button } from '../ui/Button'
import { Dialog } from '../ui/Dialog'
import { useLeadWords } from './use-lead-words'
import type { MapLayer } from './use-map-layers'

type MapLayersProps = {
  layers: readonly MapLayer[]
  onTable: () => void
}

/** What else can be shown: beside each other where there is room, on a phone behind one button, for the map's sake. */
export function MapLayers({ layers, onTable }: MapLayersProps) {
  const { common } = useWords()
  const { mapTools } = useLeadWords()
  const [isOpen, setIsOpen] = useState(false)
  const buttons: readonly MapLayer[] = [{ words: mapTools.asTable, turn: onTable }, ...layers]
  return (
    <>
      {layers.map(({ words, icon, turn }) => (
        <div key={words} className="where-wide">
          <Button icon={icon} onPress={turn}>
            {words}
          </Button>
        </div>
      ))}
      <div className="where-narrow">
        <Button onPress={() => setIsOpen(true)}>{mapTools.show}</Button>
      </div>
      <Dialog
        kind="sheet"
        open={isOpen}
        title={mapTools.showTitle}
        onClose={() => setIsOpen(false)}
        closeLabel={common.close}
      >
        <div className="stack">
          {buttons.map(({ words, icon, turn }) => (
            <Button
              key={words}
              wide
              icon={icon}
              onPress={() => {
                setIsOpen(false)
                turn()
              }}
            >
              {words}
            </Button>
          ))}
        </div>
      </Dialog>
    </>
  )
}

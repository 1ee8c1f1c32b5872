'use client'

import { useLeadWords } from '../layout/Words'
import type { TilesOnMap } from '../map/use-tiles-on-map'
import { Button } from '../ui/Button'

/** Shows and hides what another server pictures of the ground; nothing where none is set. */
export function TilesOnMapButton({ ground }: { ground: TilesOnMap }) {
  const { aerial: text } = useLeadWords()
  if (ground.from === null) return null
  return (
    <>
      <Button icon="map" onPress={ground.turn}>
        {ground.isShown ? text.hideTiles : text.showTiles}
      </Button>
      {ground.isShown && (
        <p className="map-said" role="status">
          {text.tilesFrom(ground.from)}
        </p>
      )}
    </>
  )
}

'use client'

import { useLeadWords } from '../layout/Words'
import type { TilesOnMap as Ground } from '../map/use-tiles-on-map'

/** Whose pictures lie under the map. */
export function TilesOnMap({ ground }: { ground: Ground }) {
  const { aerial: text } = useLeadWords()
  if (!ground.isShown || ground.from === null) return null
  return (
    <p className="map-said" role="status">
      {text.tilesFrom(ground.from)}
    </p>
  )
}

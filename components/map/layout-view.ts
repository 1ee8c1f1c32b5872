/** What of the ground the map shows while a block is laid out. */

import type { Map as LeafletMap } from 'leaflet'

import type { Position } from '@/lib/domain/orchard/types'

type Corners = readonly Position[]

export function cornersInView(map: LeafletMap, corners: Corners): void {
  const [first] = corners
  if (!first) return
  if (corners.length === 1) {
    map.setView([first.lat, first.lon], Math.max(map.getZoom(), 18), { animate: false })
    return
  }
  const isTall = map.getSize().y > 480
  map.fitBounds(
    corners.map(({ lat, lon }) => [lat, lon]),
    // Room for the tools above and the sums below.
    {
      paddingTopLeft: [48, isTall ? 120 : 60],
      paddingBottomRight: [64, isTall ? 130 : 60],
      animate: false,
    }
  )
}

export function isOutOfView(map: LeafletMap, corners: Corners): boolean {
  const bounds = map.getBounds().pad(0.3)
  return corners.some(({ lat, lon }) => !bounds.contains([lat, lon]))
}

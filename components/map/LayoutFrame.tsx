'use client'

import 'leaflet/dist/leaflet.css'
import './map.css'

import type L from 'leaflet'
import { useState } from 'react'
import { MapContainer } from 'react-leaflet'

import { ZoomButtons } from '../ui/ZoomButtons'
import { LayoutGround } from './LayoutGround'
import type { LayoutMapProps } from './layout-map-props'

/** The frame: Leaflet's container and zoom buttons. */
export function LayoutFrame(props: LayoutMapProps) {
  const [map, setMap] = useState<L.Map | null>(null)
  const { startAt, words } = props
  return (
    <div className="orchard-map">
      <MapContainer
        ref={setMap}
        className="orchard-map-canvas"
        center={startAt ? [startAt.lat, startAt.lon] : [0, 0]}
        zoom={18}
        minZoom={3}
        maxZoom={24}
        zoomSnap={0.25}
        zoomControl={false}
        attributionControl={false}
        zoomAnimation={false}
        fadeAnimation={false}
        markerZoomAnimation={false}
        inertia={false}
        keyboard={false}
        doubleClickZoom={false}
      >
        <LayoutGround {...props} />
      </MapContainer>
      <ZoomButtons
        inLabel={words.zoomIn}
        outLabel={words.zoomOut}
        onIn={() => map?.zoomIn(1)}
        onOut={() => map?.zoomOut(1)}
      />
    </div>
  )
}

'use client'

import 'leaflet/dist/leaflet.css'
import './map.css'

import type L from 'leaflet'
import { useMemo, useState } from 'react'
import { MapContainer, TileLayer } from 'react-leaflet'

import { sceneOf } from '@/lib/map/scene'

import { ZoomButtons } from '../ui/ZoomButtons'
import { MapOrchard } from './MapOrchard'
import type { MapProps } from './map-props'

/** What most servers have; closer by, the same pictures are stretched. */
const deepestTiles = 19

/** The frame round the canvas: Leaflet's container, zoom buttons, and where it begins. */
export function MapFrame({ trees, blocks, upDeg = 0, ...props }: MapProps) {
  const [map, setMap] = useState<L.Map | null>(null)
  const scene = useMemo(() => sceneOf(trees, blocks, upDeg), [trees, blocks, upDeg])

  return (
    <div className="orchard-map">
      <MapContainer
        ref={setMap}
        className="orchard-map-canvas"
        center={[0, 0]}
        zoom={16}
        minZoom={12}
        maxZoom={24}
        zoomSnap={0.25}
        zoomControl={false}
        attributionControl={false}
        // Only a zoom that somebody asks for moves, so that they see where they come to.
        zoomAnimation={!matchMedia('(prefers-reduced-motion: reduce)').matches}
        fadeAnimation={false}
        markerZoomAnimation={false}
        inertia={false}
        // The arrow keys belong to the trees.
        keyboard={false}
      >
        {props.tiles && (
          <TileLayer url={props.tiles.url} maxZoom={24} maxNativeZoom={deepestTiles} />
        )}
        <MapOrchard scene={scene} {...props} />
      </MapContainer>
      {props.tiles && <p className="map-by">{props.tiles.by}</p>}
      <ZoomButtons
        inLabel={props.words.zoomIn}
        outLabel={props.words.zoomOut}
        onIn={() => map?.zoomIn(1)}
        onOut={() => map?.zoomOut(1)}
      />
    </div>
  )
}

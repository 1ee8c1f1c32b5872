'use client'

import dynamic from 'next/dynamic'

import type { MapProps } from './map-props'

// Leaflet touches the window as soon as it is imported, and weighs 45 kB.
const MapFrame = dynamic(() => import('./MapFrame').then(({ MapFrame }) => MapFrame), {
  ssr: false,
})

/** The live map. It fills the box it is put in. */
export function OrchardMap(props: MapProps) {
  return <MapFrame {...props} />
}

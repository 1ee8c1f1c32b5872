'use client'

import dynamic from 'next/dynamic'

import type { MapProps } from './map-props'

/** Leaflet touches the window as soon as it is imported, and weighs 45 kB. */
export const fetchMapFrame = async () => (await import('./MapFrame')).MapFrame
const MapFrame = dynamic(fetchMapFrame, { ssr: false })

/** The live map. It fills the box it is put in. */
export function OrchardMap(props: MapProps) {
  return <MapFrame {...props} />
}

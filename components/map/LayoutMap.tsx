'use client'

import dynamic from 'next/dynamic'

import type { LayoutMapProps } from './layout-map-props'

/** Leaflet touches the window as soon as it is imported, and weighs 45 kB. */
const LayoutFrame = dynamic(async () => (await import('./LayoutFrame')).LayoutFrame, { ssr: false })

/** The map on which a block is laid out. It fills the box it is put in. */
export function LayoutMap(props: LayoutMapProps) {
  return <LayoutFrame {...props} />
}

'use client'

import type L from 'leaflet'
import { useEffect, useEffectEvent, useMemo, useRef, useState } from 'react'
import { useMap } from 'react-leaflet'

import type { Position } from '@/lib/domain/orchard/types'
import { LayoutLayer } from '@/lib/map/layout-layer'

import type { LayoutMapProps } from './layout-map-props'
import { cornersInView, isOutOfView } from './layout-view'
import { listenToCorners } from './listen-to-corners'
import { listenToDrawing } from './listen-to-drawing'
import { listenToPage } from './listen-to-page'

const noStroke: readonly Position[] = []

/** Hands the drawing to the layer, and brings back what was tapped, dragged and drawn. */
export function LayoutGround(props: LayoutMapProps) {
  const { corners, chosen, rows, sideWords, others, north, startAt, mode, words } = props
  const map = useMap()
  const layer = useMemo(() => new LayoutLayer(), [])
  const [stroke, setStroke] = useState(noStroke)
  const seen = useRef(0)

  useEffect(() => {
    layer.addTo(map)
    return () => {
      layer.remove()
    }
  }, [map, layer])
  useEffect(
    () => layer.draw({ corners, chosen, rows, sideWords, others, stroke, north }),
    [layer, corners, chosen, rows, sideWords, others, stroke, north]
  )
  useEffect(() => listenToPage(map, () => layer.readPalette()), [map, layer])
  // A new corner that is typed far away is looked for; a dragged one is under the finger.
  useEffect(() => {
    if (corners.length !== seen.current || isOutOfView(map, corners)) cornersInView(map, corners)
    seen.current = corners.length
  }, [map, corners])
  useEffect(() => {
    if (startAt && seen.current === 0)
      map.setView([startAt.lat, startAt.lon], 18, { animate: false })
  }, [map, startAt])

  const at = (point: L.Point): Position => {
    const { lat, lng } = map.containerPointToLatLng(point)
    return { lat, lon: lng }
  }
  const cornerNow = useEffectEvent(() => corners)
  const choose = useEffectEvent((corner: number) => props.onChoose(corner))
  const move = useEffectEvent((corner: number, to: L.Point) => props.onMove(corner, at(to)))
  const tap = useEffectEvent((point: L.Point) => {
    if (mode === 'corners') props.onAdd(at(point))
    if (mode === 'place') props.onPlace(at(point))
  })
  useEffect(() => {
    if (mode === 'area') return
    return listenToCorners(map, {
      corners: () => (mode === 'corners' ? cornerNow() : noStroke),
      onChoose: choose,
      onMove: move,
      onTap: tap,
    })
  }, [map, mode])

  const draw = useEffectEvent((points: readonly L.Point[], isOver: boolean) => {
    const shape = points.map(at)
    setStroke(isOver ? noStroke : shape)
    if (isOver && shape.length > 2) props.onArea(shape)
  })
  useEffect(
    () => (mode === 'area' ? listenToDrawing(map, { onStroke: draw }) : undefined),
    [map, mode]
  )
  useEffect(() => {
    const container = map.getContainer()
    container.setAttribute('role', 'img')
    container.setAttribute('aria-label', words.label)
    container.removeAttribute('tabindex')
  }, [map, words.label])

  return null
}

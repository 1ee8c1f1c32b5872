import type L from 'leaflet'

import type { Position } from '@/lib/domain/orchard/types'

type Listening = {
  corners: () => readonly Position[]
  onChoose: (corner: number) => void
  onMove: (corner: number, to: L.Point) => void
  /** Beside every corner, and without having moved. */
  onTap: (point: L.Point) => void
}

/** A thumb's width round a corner. */
const nearPx = 28
/** Nearer than this to where it began, a finger has tapped and not dragged. */
const tapPx = 8

/** A corner that is taken hold of follows the finger; anywhere else the map moves. Returns how to stop. */
export function listenToCorners(map: L.Map, { corners, onChoose, onMove, onTap }: Listening) {
  const element = map.getContainer()
  let held: { pointer: number; corner: number | null; from: L.Point } | null = null

  const cornerAt = (point: L.Point): number | null => {
    const near = corners()
      .map(({ lat, lon }, index) => ({
        index,
        px: map.latLngToContainerPoint([lat, lon]).distanceTo(point),
      }))
      .filter(({ px }) => px < nearPx)
      .toSorted((a, b) => a.px - b.px)
    return near[0]?.index ?? null
  }
  const onDown = (event: PointerEvent) => {
    if (!event.isPrimary || event.button !== 0) {
      held = null
      return
    }
    const from = map.mouseEventToContainerPoint(event)
    const corner = cornerAt(from)
    held = { pointer: event.pointerId, corner, from }
    if (corner === null) return
    map.dragging.disable()
    onChoose(corner)
  }
  const onPointerMove = (event: PointerEvent) => {
    if (held?.pointer !== event.pointerId || held.corner === null) return
    const to = map.mouseEventToContainerPoint(event)
    if (to.distanceTo(held.from) > tapPx) onMove(held.corner, to)
  }
  const onUp = (event: PointerEvent) => {
    const was = held
    held = null
    map.dragging.enable()
    if (was?.pointer !== event.pointerId || was.corner !== null) return
    const to = map.mouseEventToContainerPoint(event)
    if (to.distanceTo(was.from) <= tapPx) onTap(to)
  }
  const giveUp = () => {
    held = null
    map.dragging.enable()
  }

  // Before Leaflet, which would begin to drag the map.
  element.addEventListener('pointerdown', onDown, true)
  addEventListener('pointermove', onPointerMove)
  addEventListener('pointerup', onUp)
  addEventListener('pointercancel', giveUp)
  return () => {
    giveUp()
    element.removeEventListener('pointerdown', onDown, true)
    removeEventListener('pointermove', onPointerMove)
    removeEventListener('pointerup', onUp)
    removeEventListener('pointercancel', giveUp)
  }
}

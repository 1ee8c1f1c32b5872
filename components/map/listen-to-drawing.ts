import type L from 'leaflet'

/** One stroke: a line drawn by finger or mouse, or a corner that was tapped. */
type Drawing = {
  /** So far, in pixels of the map. */
  onStroke: (points: readonly L.Point[], isOver: boolean) => void
}

/** Nearer than this to where it began, a finger has tapped and not drawn. */
const tapPx = 12
/** Points of a line closer together than this say nothing new. */
const stepPx = 7

/** While this listens, one finger draws and two still move and zoom the map. Returns how to stop. */
export function listenToDrawing(map: L.Map, { onStroke }: Drawing) {
  const element = map.getContainer()
  let path: L.Point[] = []
  let pointer: number | null = null

  const onDown = (event: PointerEvent) => {
    // A second finger: they want to move the map, not to draw.
    if (!event.isPrimary) return giveUp()
    if (event.button !== 0) return
    pointer = event.pointerId
    path = [map.mouseEventToContainerPoint(event)]
  }
  const onMove = (event: PointerEvent) => {
    if (event.pointerId !== pointer) return
    const [next, last] = [map.mouseEventToContainerPoint(event), path.at(-1)]
    if (last && next.distanceTo(last) < stepPx) return
    path.push(next)
    if (hasMoved()) onStroke(path, false)
  }
  const onUp = (event: PointerEvent) => {
    if (event.pointerId !== pointer) return
    onStroke(hasMoved() ? path : path.slice(0, 1), true)
    pointer = null
  }
  function giveUp(): void {
    if (pointer !== null) onStroke([], true)
    pointer = null
  }
  function hasMoved(): boolean {
    const [first] = path
    return first !== undefined && path.some((one) => one.distanceTo(first) > tapPx)
  }

  map.dragging.disable()
  map.doubleClickZoom.disable()
  element.classList.add('is-drawing')
  element.addEventListener('pointerdown', onDown)
  // Also where the finger leaves the map.
  addEventListener('pointermove', onMove)
  addEventListener('pointerup', onUp)
  addEventListener('pointercancel', giveUp)
  return () => {
    map.dragging.enable()
    map.doubleClickZoom.enable()
    element.classList.remove('is-drawing')
    element.removeEventListener('pointerdown', onDown)
    removeEventListener('pointermove', onMove)
    removeEventListener('pointerup', onUp)
    removeEventListener('pointercancel', giveUp)
  }
}

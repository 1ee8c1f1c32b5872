/** What part of the orchard the screen shows. */

import type { Map as LeafletMap } from 'leaflet'

import type { Point } from './plane'
import type { Scene } from './scene'

/** Rows to be seen round the next tree: enough to recognise the place, few enough to read. */
const rowsAround = 5

/** Maps that somebody has moved or tapped: from then on they stay where they are. */
const inHand = new WeakSet<LeafletMap>()

/**
 * At the next tree, where there is one; else everything, also when the box gets its final size late or a tablet
 * is turned, until somebody takes the map in hand. Returns how to stop.
 */
export function begin(map: LeafletMap, scene: Scene, called: number | null): () => void {
  const at = called === null ? null : pointOf(scene, called)
  if (!at) return keepWhole(map, scene)
  map.setView(leafletAt(scene, at), zoomForRows(map, scene, called), { animate: false })
  inHand.add(map)
  return () => {}
}

function keepWhole(map: LeafletMap, scene: Scene): () => void {
  let isOurs = false
  const showWhole = () => {
    if (inHand.has(map)) return
    isOurs = true
    showAll(map, scene)
    isOurs = false
  }
  const take = () => {
    if (!isOurs) inHand.add(map)
  }
  showWhole()
  map.on('resize', showWhole).on('movestart click', take)
  return () => {
    map.off('resize', showWhole).off('movestart click', take)
  }
}

/** Moves the map just so far that the tree is seen. */
export function comeInto(map: LeafletMap, scene: Scene, no: number): void {
  const at = pointOf(scene, no)
  if (at) map.panInside(leafletAt(scene, at), { padding: [64, 64], animate: false })
}

/** Nearer or farther, and the tree stays where it is on the screen; without one the middle does. */
export function zoomAt(
  map: LeafletMap,
  scene: Scene,
  { by, tree }: { by: 1 | -1; tree: number | null }
): void {
  const at = tree === null ? null : pointOf(scene, tree)
  map.setZoomAround(at ? leafletAt(scene, at) : map.getCenter(), map.getZoom() + by)
}

/** From now on it stays where it is, whatever its box does: somebody draws on it. */
export function takeInHand(map: LeafletMap): void {
  inHand.add(map)
}

/** To a tree that somebody looks for: in the middle, near enough to read the numbers of its rows. */
export function goTo(map: LeafletMap, scene: Scene, no: number): void {
  const at = pointOf(scene, no)
  if (!at) return
  inHand.add(map)
  const zoom = Math.max(map.getZoom(), zoomForRows(map, scene, no))
  map.setView(leafletAt(scene, at), zoom, { animate: false })
}

function showAll(map: LeafletMap, scene: Scene): void {
  const { minX, minY, maxX, maxY } = scene.box
  const low = leafletAt(scene, { x: minX, y: maxY })
  const high = leafletAt(scene, { x: maxX, y: minY })
  // Room for the names above the blocks and the numbers beside the rows; on a map that is high enough also for
  // what lies over its edges.
  const isTall = map.getSize().y > 400
  map.fitBounds([low, high], {
    paddingTopLeft: [40, isTall ? 120 : 70],
    paddingBottomRight: [40, isTall ? 110 : 40],
    animate: false,
  })
}

function zoomForRows(map: LeafletMap, scene: Scene, called: number | null): number {
  const tree = scene.trees[scene.indexOf.get(called ?? Number.NaN) ?? 0]
  const own = scene.blocks.find(({ block }) => block.no === tree?.block)
  const rowSpacingM = own?.block.rowSpacingM ?? 5
  const shownPx = Math.min(map.getSize().x, 480)
  const zoom = Math.log2(shownPx / (rowsAround * rowSpacingM * scene.plane.unitsPerM))
  return Math.min(map.getMaxZoom(), zoom)
}

function pointOf(scene: Scene, no: number): Point | null {
  const index = scene.indexOf.get(no)
  return index === undefined ? null : { x: scene.xs[index] ?? 0, y: scene.ys[index] ?? 0 }
}

function leafletAt(scene: Scene, point: Point): [lat: number, lon: number] {
  const { lat, lon } = scene.plane.leafletAt(point)
  return [lat, lon]
}

/** The canvas under an orchard: larger than the screen, moved along with the map. */

import L from 'leaflet'

import type { Box } from './grid-index'
import type { Point } from './plane'
import type { View } from './view'

/** How much of the screen's size it reaches beyond each edge. */
const beyond = 0.2

const nothing: Box = { minX: 0, minY: 0, maxX: 0, maxY: 0 }

export class LayerCanvas {
  readonly context: CanvasRenderingContext2D
  view: View = { scale: 1, originX: 0, originY: 0, sharpness: 1, screen: nothing }
  /** In pixels of the page, whatever the screen's own are. */
  box: Box = nothing
  private readonly canvas: HTMLCanvasElement
  private corner = L.point(0, 0)
  private zoom = Number.NaN

  constructor(readonly map: L.Map) {
    this.canvas = L.DomUtil.create('canvas', '', map.getPane('overlayPane'))
    const context = this.canvas.getContext('2d', { alpha: false })
    if (!context) throw new Error('This browser draws no canvas.')
    this.context = context
  }

  remove(): void {
    this.canvas.remove()
  }

  /** To the map's present place, size and zoom. Everything on it must be painted again. */
  fitToMap(): void {
    const size = this.map.getSize()
    const margin = size.multiplyBy(beyond).round()
    const full = size.add(margin).add(margin)
    this.corner = this.map.containerPointToLayerPoint(margin.multiplyBy(-1)).round()
    L.DomUtil.setPosition(this.canvas, this.corner)
    const sharpness = Math.min(3, window.devicePixelRatio || 1)
    this.resize(full, sharpness)
    this.zoom = this.map.getZoom()
    const origin = this.map.getPixelOrigin().add(this.corner)
    this.view = {
      scale: 2 ** this.zoom,
      originX: origin.x,
      originY: origin.y,
      sharpness,
      screen: { minX: margin.x, minY: margin.y, maxX: margin.x + size.x, maxY: margin.y + size.y },
    }
    this.box = { minX: 0, minY: 0, maxX: full.x, maxY: full.y }
  }

  /** The screen shows something that is not painted, or painted for another zoom. */
  isOverrun(): boolean {
    if (this.map.getZoom() !== this.zoom) return true
    const size = this.map.getSize()
    const low = this.fromContainer(L.point(0, 0))
    const high = this.fromContainer(size)
    return low.x < 0 || low.y < 0 || high.x > this.box.maxX || high.y > this.box.maxY
  }

  fromContainer(point: L.Point): Point {
    const { x, y } = this.map.containerPointToLayerPoint(point).subtract(this.corner)
    return { x, y }
  }

  private resize({ x, y }: L.Point, sharpness: number): void {
    const [width, height] = [Math.round(x * sharpness), Math.round(y * sharpness)]
    // Setting a size clears the canvas and costs a few milliseconds, so only when it changed.
    if (this.canvas.width === width && this.canvas.height === height) return
    this.canvas.width = width
    this.canvas.height = height
    this.canvas.style.width = `${x}px`
    this.canvas.style.height = `${y}px`
    this.context.scale(sharpness, sharpness)
  }
}

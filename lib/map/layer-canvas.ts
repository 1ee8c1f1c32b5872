/** The canvas under an orchard: larger than the screen, moved along with the map, stretched while it zooms. */

import L from 'leaflet'

import type { Box } from './grid-index'
import type { Point } from './plane'
import type { View } from './view'

/** How much of the screen's size it reaches beyond each edge. */
const beyond = 0.2

/** Past this a canvas stays blank on some tablets: 4096 squared, from memory. */
const mostPixels = 16_777_216

const nothing: Box = { minX: 0, minY: 0, maxX: 0, maxY: 0 }

export class LayerCanvas {
  readonly context: CanvasRenderingContext2D
  view: View = { scale: 1, originX: 0, originY: 0, sharpness: 1, screen: nothing }
  /** In pixels of the page, whatever the screen's own are. */
  box: Box = nothing
  /** What of the box is painted so far. */
  painted: Box = nothing
  private readonly canvas: HTMLCanvasElement
  private corner = L.point(0, 0)
  private zoom = Number.NaN
  /** How many times as large as painted it is shown. */
  private stretch = 1

  /** `isClear`: what lies below is seen through it; else it is quicker. */
  constructor(
    readonly map: L.Map,
    isClear: boolean
  ) {
    this.canvas = L.DomUtil.create('canvas', 'leaflet-zoom-animated', map.getPane('overlayPane'))
    const context = this.canvas.getContext('2d', { alpha: isClear })
    if (!context) throw new Error('This browser draws no canvas.')
    this.context = context
  }

  /** What it takes of memory is given back at once; some phones wait with that until they have none. */
  remove(): void {
    this.canvas.remove()
    this.canvas.width = 0
    this.canvas.height = 0
  }

  /**
   * To the map's present place, size and zoom. Everything on it must be painted again. Says whether it is
   * another zoom, of which nothing was painted before.
   */
  fitToMap(): boolean {
    const size = this.map.getSize()
    const margin = size.multiplyBy(beyond).round()
    const full = size.add(margin).add(margin)
    this.corner = this.map.containerPointToLayerPoint(margin.multiplyBy(-1)).round()
    this.stretch = 1
    L.DomUtil.setPosition(this.canvas, this.corner)
    const sharpness = sharpnessFor(full)
    this.resize(full, sharpness)
    const isOtherZoom = this.zoom !== this.map.getZoom()
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
    return isOtherZoom
  }

  /** What is painted, as large as it is at another zoom: blurred, but at once. */
  stretchTo(centre: L.LatLng, zoom: number): void {
    if (Number.isNaN(this.zoom)) return
    const pane = L.DomUtil.getPosition(this.map.getPane('mapPane') ?? this.canvas)
    const middle = this.map.getSize().divideBy(2)
    const pixelOrigin = this.map.project(centre, zoom).subtract(middle).add(pane).round()
    this.stretch = this.map.getZoomScale(zoom, this.zoom)
    const { originX, originY } = this.view
    this.corner = L.point(originX, originY).multiplyBy(this.stretch).subtract(pixelOrigin)
    L.DomUtil.setTransform(this.canvas, this.corner, this.stretch)
  }

  /** The screen shows something that is not painted. */
  isOverrun(): boolean {
    const low = this.fromContainer(L.point(0, 0))
    const high = this.fromContainer(this.map.getSize())
    const { minX, minY, maxX, maxY } = this.painted
    // Half a pixel is what rounding the corner may cost.
    return low.x < minX - 0.5 || low.y < minY - 0.5 || high.x > maxX + 0.5 || high.y > maxY + 0.5
  }

  fromContainer(point: L.Point): Point {
    const { x, y } = this.map.containerPointToLayerPoint(point).subtract(this.corner)
    return { x: x / this.stretch, y: y / this.stretch }
  }

  private resize({ x, y }: L.Point, sharpness: number): void {
    const [width, height] = [Math.floor(x * sharpness), Math.floor(y * sharpness)]
    // Setting a size clears the canvas and costs a few milliseconds, so only when it changed.
    if (this.canvas.width === width && this.canvas.height === height) return
    this.canvas.width = width
    this.canvas.height = height
    this.canvas.style.width = `${x}px`
    this.canvas.style.height = `${y}px`
    this.context.scale(sharpness, sharpness)
  }
}

function sharpnessFor({ x, y }: L.Point): number {
  return Math.min(3, window.devicePixelRatio || 1, Math.sqrt(mostPixels / (x * y)))
}

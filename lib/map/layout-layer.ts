/** A block that is being laid out: its outline, its rows, and the trees that would be made, on one canvas. */

import L from 'leaflet'

import type { Position } from '@/lib/domain/orchard/types'

import { type LaidOut, paintLayout } from './paint-layout'
import { type Palette, paletteAt } from './palette'
import { type Point, planeAround } from './plane'

export type LayoutDrawing = {
  corners: readonly Position[]
  /** The corner that is typed or dragged. */
  chosen: number | null
  /** In rows, each in the order of its places. */
  rows: readonly (readonly { position: Position; isGap: boolean }[])[]
  /** How long each side is, in words, beginning at its corner. */
  sideWords: readonly string[]
  /** Trees that are there already. */
  others: readonly Position[]
  /** A shape that is being drawn. */
  stroke: readonly Position[]
  north: string
}

/** Only lengths and places on the web map's plane: it is never turned here. */
const { pointOf } = planeAround({ lat: 0, lon: 0 })

export class LayoutLayer extends L.Layer {
  private drawing: LaidOut | null = null
  private canvas: HTMLCanvasElement | null = null
  private palette: Palette | null = null
  private frame: number | null = null
  private map: L.Map | null = null

  override onAdd(map: L.Map): this {
    this.map = map
    this.canvas = L.DomUtil.create('canvas', '', map.getPane('overlayPane'))
    this.readPalette()
    map.on('move moveend zoom viewreset resize', this.repaint, this)
    return this
  }

  override onRemove(map: L.Map): this {
    map.off('move moveend zoom viewreset resize', this.repaint, this)
    if (this.frame !== null) cancelAnimationFrame(this.frame)
    this.frame = null
    this.canvas?.remove()
    this.canvas = null
    this.map = null
    return this
  }

  /** Everything is projected once; moving the map then only scales it. */
  draw(drawing: LayoutDrawing): void {
    this.drawing = {
      ...drawing,
      corners: drawing.corners.map(pointOf),
      others: drawing.others.map(pointOf),
      stroke: drawing.stroke.map(pointOf),
      rows: drawing.rows.map((row) =>
        row.map(({ position, isGap }) => ({ ...pointOf(position), isGap }))
      ),
    }
    this.repaint()
  }

  /** After the page went from light to dark or back. */
  readPalette(): void {
    if (this.map) this.palette = paletteAt(this.map.getContainer())
    this.repaint()
  }

  private repaint(): void {
    if (this.frame !== null || !this.map) return
    this.frame = requestAnimationFrame(() => {
      this.frame = null
      this.paint()
    })
  }

  private paint(): void {
    const { map, canvas, palette, drawing } = this
    const context = canvas?.getContext('2d')
    if (!map || !canvas || !context || !palette || !drawing) return
    const { x: width, y: height } = map.getSize()
    const sharpness = Math.min(3, window.devicePixelRatio || 1)
    canvas.width = Math.round(width * sharpness)
    canvas.height = Math.round(height * sharpness)
    canvas.style.width = `${width}px`
    canvas.style.height = `${height}px`
    L.DomUtil.setPosition(canvas, map.containerPointToLayerPoint([0, 0]))
    context.scale(sharpness, sharpness)

    const scale = 2 ** map.getZoom()
    const corner = map.getPixelBounds().min ?? L.point(0, 0)
    const at = ({ x, y }: Point): Point => ({ x: x * scale - corner.x, y: y * scale - corner.y })
    paintLayout(context, { drawing, palette, at, size: { width, height } })
  }
}

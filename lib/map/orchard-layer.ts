/**
 * The orchard as one Leaflet layer with a canvas of its own.
 *
 * Ten thousand Leaflet markers cost seconds; one canvas over typed arrays costs milliseconds
 * (`tests/bench/map.ts`). The canvas is larger than the screen, so that a drag only shifts
 * it. What changes asks for a redraw, and there is at most one a frame.
 */

import L from 'leaflet'

import type { TreeLooks } from '@/lib/domain/orchard/status'

import { type Highlights, plainPicture } from './highlights'
import { LayerCanvas } from './layer-canvas'
import { type Looks, looksOf } from './looks'
import { marginsOf } from './margins'
import { type Picture, paint, paintBare } from './paint'
import { type Palette, paletteAt } from './palette'
import { bubblesOf } from './people'
import type { Point } from './plane'
import { squareOf } from './reach'
import type { Scene } from './scene'
import { type Tapped, tappedAt } from './tapped'
import { type Style, treeImages } from './tree-images'
import { sizesAt, toPlane } from './view'

/** Until what lies beyond the screen is painted: after the frame that shows it, before a thumb gets there. */
const restMs = 60

/** Past so many changed trees a full paint is cheaper than square by square. */
const mostSquares = 40

export class OrchardLayer extends L.Layer {
  private readonly looks: Looks
  private highlights = plainPicture
  private outline: readonly Point[] = []
  private focused: number | null = null
  private canvas: LayerCanvas | null = null
  private palette: Palette | null = null
  private picture: Picture | null = null
  private frame: number | null = null
  private rest: ReturnType<typeof setTimeout> | null = null
  /** Leaflet moves the canvas by itself until it is there. */
  private isZooming = false
  private isAllDirty = true
  private readonly dirty = new Set<number>()
  private stopListening = () => {}

  /** `notSurveyed` is said at a block that has no positions; `hasTiles`: pictures of the ground lie below. */
  constructor(
    private readonly scene: Scene,
    private readonly notSurveyed: string,
    private readonly hasTiles = false
  ) {
    super()
    this.looks = looksOf(scene)
  }

  override onAdd(map: L.Map): this {
    this.canvas = new LayerCanvas(map, this.hasTiles)
    this.palette = paletteAt(map.getContainer())
    this.stopListening = listenTo(map, {
      moveend: () => this.settle(),
      // Its box is another in this frame already.
      resize: () => {
        this.settle()
        this.paintNow()
      },
      move: () => this.canvas?.isOverrun() && this.repaint(),
      zoomanim: ({ center, zoom }: L.ZoomAnimEvent) => {
        this.isZooming = true
        this.canvas?.stretchTo(center, zoom)
      },
      zoom: ({ pinch }: L.LeafletEvent & { pinch?: true }) => {
        this.canvas?.stretchTo(map.getCenter(), map.getZoom())
        if (pinch) this.fillPinched()
      },
    })
    this.repaint()
    return this
  }

  override onRemove(): this {
    this.stopListening()
    this.stopRest()
    if (this.frame !== null) cancelAnimationFrame(this.frame)
    this.frame = null
    this.canvas?.remove()
    this.canvas = null
    return this
  }

  setLooks(looks: TreeLooks): void {
    const dirty = this.looks.take(looks)
    if (dirty === null || dirty.length > mostSquares) this.repaint()
    else this.repaintTrees(dirty)
  }

  setHighlights(highlights: Partial<Highlights>): void {
    this.highlights = { ...plainPicture, ...highlights }
    this.repaint()
  }

  /** A shape that is being drawn, in corners of the plane. */
  setOutline(corners: readonly Point[]): void {
    if (corners.length === 0 && this.outline.length === 0) return
    this.outline = corners
    this.repaint()
  }

  /** The tree the keyboard is at. */
  setFocused(no: number | null): void {
    this.focused = no
    this.repaint()
  }

  /** After the page went from light to dark or back. */
  readPalette(): void {
    if (this.canvas) this.palette = paletteAt(this.canvas.map.getContainer())
    this.repaint()
  }

  tappedAt(point: L.Point): Tapped {
    if (!this.canvas) return { kind: 'nothing' }
    const { hasGaps } = this.highlights
    return tappedAt(this.scene, this.canvas.view, this.canvas.fromContainer(point), hasGaps)
  }

  /** Where on the plane a point of the screen is. */
  planeAt(point: L.Point): Point | null {
    if (!this.canvas) return null
    return toPlane(this.canvas.view, this.canvas.fromContainer(point))
  }

  /**
   * Two fingers: Leaflet asks in each frame, so what would show bare ground is painted in this one and not
   * in the next, and with all that lies beyond the screen, since the fingers go on.
   */
  private fillPinched(): void {
    const { canvas, palette } = this
    if (!canvas?.isOverrun() || !palette || this.isZooming) return
    canvas.fitToMap()
    this.paintAll(canvas, palette, false)
  }

  private settle(): void {
    this.isZooming = false
    this.repaint()
  }

  private repaint(): void {
    this.isAllDirty = true
    this.askForFrame()
  }

  private repaintTrees(indexes: readonly number[]): void {
    if (indexes.length === 0) return
    for (const index of indexes) this.dirty.add(index)
    this.askForFrame()
  }

  private askForFrame(): void {
    if (this.canvas === null || this.frame !== null) return
    this.frame = requestAnimationFrame(() => this.paintNow())
  }

  private paintNow(): void {
    if (this.frame !== null) cancelAnimationFrame(this.frame)
    this.frame = null
    this.paintDirty()
  }

  private paintDirty(): void {
    const { canvas, palette } = this
    if (!canvas || !palette || this.isZooming) return
    if (this.isAllDirty || !this.picture) {
      const isOtherZoom = canvas.fitToMap()
      this.paintAll(canvas, palette, isOtherZoom)
    } else {
      for (const index of this.dirty)
        paint(canvas.context, this.picture, squareOf(this.picture, index))
    }
    this.isAllDirty = false
    this.dirty.clear()
  }

  /** At another zoom the screen comes first, and what is beyond it once that is seen. */
  private paintAll(canvas: LayerCanvas, palette: Palette, isScreenFirst: boolean): void {
    this.stopRest()
    const picture = this.compose(canvas, palette)
    this.picture = picture
    canvas.painted = isScreenFirst ? canvas.view.screen : canvas.box
    if (isScreenFirst) {
      paintBare(canvas.context, picture, canvas.box)
      this.rest = setTimeout(() => {
        for (const margin of marginsOf(canvas.box, canvas.view.screen))
          paint(canvas.context, picture, margin)
        canvas.painted = canvas.box
      }, restMs)
    }
    paint(canvas.context, picture, canvas.painted)
  }

  private stopRest(): void {
    if (this.rest !== null) clearTimeout(this.rest)
    this.rest = null
  }

  /** What single squares are painted from, too, until everything is painted again. */
  private compose(canvas: LayerCanvas, palette: Palette): Picture {
    const { scene, looks, notSurveyed, hasTiles, focused, highlights, outline } = this
    const { view } = canvas
    const sizes = sizesAt(scene, view)
    const style = { palette, markPx: sizes.markPx, sharpness: view.sharpness }
    return {
      ...highlights,
      scene,
      looks,
      view,
      sizes,
      palette,
      images:
        this.picture && sameStyle(this.picture, style) ? this.picture.images : treeImages(style),
      bubbles: bubblesOf(scene, looks.people(), {
        view,
        sizes,
        markAt: looks.markAt,
        calling: looks.calling(),
      }),
      focused,
      outline,
      notSurveyed,
      hasTiles,
    }
  }
}

function sameStyle({ palette, sizes, view }: Picture, style: Style): boolean {
  return (
    palette === style.palette && sizes.markPx === style.markPx && view.sharpness === style.sharpness
  )
}

/** Listens until the function it returns is called. */
function listenTo(map: L.Map, handlers: L.LeafletEventHandlerFnMap): () => void {
  map.on(handlers)
  return () => map.off(handlers)
}

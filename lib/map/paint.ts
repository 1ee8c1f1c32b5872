/** Paints an orchard, or one square of it, from the ground up. */

import type { Mark } from '@/lib/domain/orchard/status'
import { marks } from '@/lib/domain/orchard/status'

import type { Box } from './grid-index'
import type { Looks } from './looks'
import { drawMarks } from './marks'
import { paintGround } from './paint-ground'
import {
  paintBlockNames,
  paintBubbles,
  paintCalled,
  paintNumbers,
  paintRowLabels,
} from './paint-words'
import type { Palette } from './palette'
import type { Bubble } from './people'
import type { Scene } from './scene'
import { boxToPlane, canopyPx, type Sizes, toCanvas, type View } from './view'

export type Picture = {
  scene: Scene
  looks: Looks
  view: View
  sizes: Sizes
  palette: Palette
  bubbles: readonly Bubble[]
  /** Numbers of trees. */
  selected: ReadonlySet<number>
  focused: number | null
  called: number | null
  /** Said below the name of a block that nobody surveyed. */
  notSurveyed: string
}

/** The square that a change of one tree touches. */
export function squareOf(picture: Picture, index: number): Box {
  const { scene, view } = picture
  const { x, y } = toCanvas(view, scene.xs[index] ?? 0, scene.ys[index] ?? 0)
  const reach = Math.ceil(reachPx(picture, scene.canopyR[index] ?? 0))
  // Whole pixels: a clip through the middle of one would leave a seam.
  const [middleX, middleY] = [Math.round(x), Math.round(y)]
  return {
    minX: middleX - reach,
    minY: middleY - reach,
    maxX: middleX + reach,
    maxY: middleY + reach,
  }
}

/** How far from its middle anything of a tree reaches, but for its bubbles. */
function reachPx({ view, sizes }: Picture, canopyR: number): number {
  return canopyPx(canopyR, view, sizes) + (sizes.hasNumbers ? 20 : 8)
}

export function paint(context: CanvasRenderingContext2D, picture: Picture, square: Box): void {
  const { scene, view, palette } = picture
  const indexes = scene.index.within(
    boxToPlane(view, square, reachPx(picture, scene.widestCanopyR))
  )
  context.save()
  context.beginPath()
  context.rect(square.minX, square.minY, square.maxX - square.minX, square.maxY - square.minY)
  context.clip()
  context.fillStyle = palette.ground
  context.fillRect(square.minX, square.minY, square.maxX - square.minX, square.maxY - square.minY)
  paintGround(context, picture, square, indexes)
  paintSelected(context, picture, indexes)
  paintMarks(context, picture, indexes)
  paintNumbers(context, picture, indexes)
  paintFocus(context, picture)
  paintRowLabels(context, picture, square)
  paintBlockNames(context, picture, square)
  paintCalled(context, picture)
  paintBubbles(context, picture, square)
  context.restore()
}

function paintMarks(
  context: CanvasRenderingContext2D,
  { scene, looks, view, sizes, palette, called }: Picture,
  indexes: readonly number[]
): void {
  const middles = new Map<Mark, number[]>(marks.map((mark) => [mark, []]))
  const badges: number[] = []
  for (const index of indexes) {
    if (scene.trees[index]?.no === called) continue
    const { x, y } = toCanvas(view, scene.xs[index] ?? 0, scene.ys[index] ?? 0)
    middles.get(looks.markAt(index))?.push(x, y)
    if (looks.hasDiseaseBadge(index)) badges.push(x + sizes.markPx * 0.5, y - sizes.markPx * 0.5)
  }
  const unit = sizes.markPx / 17
  for (const mark of marks) drawMarks(context, mark, middles.get(mark) ?? [], { unit, palette })
  drawMarks(context, 'disease', badges, { unit: Math.max(6, sizes.markPx * 0.62) / 17, palette })
}

function paintSelected(
  context: CanvasRenderingContext2D,
  { scene, view, sizes, palette, selected }: Picture,
  indexes: readonly number[]
): void {
  if (selected.size === 0) return
  context.beginPath()
  for (const index of indexes) {
    if (!selected.has(scene.trees[index]?.no ?? 0)) continue
    const { x, y } = toCanvas(view, scene.xs[index] ?? 0, scene.ys[index] ?? 0)
    const radius = canopyPx(scene.canopyR[index] ?? 0, view, sizes) + 1
    context.moveTo(x + radius, y)
    context.arc(x, y, radius, 0, 2 * Math.PI)
  }
  context.globalAlpha = 0.55
  context.fillStyle = palette.called
  context.fill()
  context.globalAlpha = 1
  context.strokeStyle = palette.ink
  context.lineWidth = 2
  context.setLineDash([5, 3])
  context.stroke()
  context.setLineDash([])
}

/** Two rings, paper and ink, so that it shows on any ground. */
function paintFocus(
  context: CanvasRenderingContext2D,
  { scene, view, sizes, palette, focused }: Picture
): void {
  const index = scene.indexOf.get(focused ?? Number.NaN)
  if (index === undefined) return
  const { x, y } = toCanvas(view, scene.xs[index] ?? 0, scene.ys[index] ?? 0)
  const radius = canopyPx(scene.canopyR[index] ?? 0, view, sizes)
  for (const [colour, ring] of [
    [palette.paper, 2],
    [palette.ink, 4.5],
  ] as const) {
    context.beginPath()
    context.arc(x, y, radius + ring, 0, 2 * Math.PI)
    context.strokeStyle = colour
    context.lineWidth = 2.5
    context.stroke()
  }
}

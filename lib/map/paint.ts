/** Paints an orchard, or one square of it, from the ground up. */

import type { Fix } from '@/lib/domain/orchard/where'

import type { Box } from './grid-index'
import type { Looks } from './looks'
import { type Aerial, paintAerial } from './paint-aerial'
import { type DiseaseShown, paintGroundToScout, paintSickRings } from './paint-disease'
import { type KeepOut, paintKeepOuts, paintMe, paintOutline } from './paint-drawn'
import { paintGaps } from './paint-gaps'
import { paintGround } from './paint-ground'
import { paintTrees } from './paint-trees'
import {
  paintBlockNames,
  paintBubbles,
  paintCalled,
  paintDealtTo,
  paintNumbers,
  paintRowLabels,
} from './paint-words'
import type { Palette } from './palette'
import type { Bubble } from './people'
import type { Point } from './plane'
import { treesNear } from './reach'
import type { Scene } from './scene'
import type { TreeImages } from './tree-images'
import { canopyPx, type Sizes, toCanvas, type View } from './view'

export type Picture = {
  scene: Scene
  looks: Looks
  view: View
  sizes: Sizes
  palette: Palette
  images: TreeImages
  bubbles: readonly Bubble[]
  /** Numbers of trees. */
  selected: ReadonlySet<number>
  /** Trees that somebody does not want to see now: there, but faint. */
  dimmed: ReadonlySet<number>
  /** Trees at which people have been for long. */
  long: ReadonlySet<number>
  keepOuts: readonly KeepOut[]
  /** Null: the map as it is for everybody. */
  disease: DiseaseShown | null
  /** Where this device is. */
  me: Fix | null
  /** Under everything; the blocks are then only tinted. */
  aerial: Aerial | null
  /** Empty places are shown, and can be tapped. */
  hasGaps: boolean
  /** Pictures of the ground lie below the canvas. */
  hasTiles: boolean
  /** A shape that is being drawn. */
  outline: readonly Point[]
  focused: number | null
  called: number | null
  /** Said below the name of a block that nobody surveyed. */
  notSurveyed: string
}

export function paint(context: CanvasRenderingContext2D, picture: Picture, square: Box): void {
  const indexes = picture.sizes.isHeaped ? [] : treesNear(picture, square)
  context.save()
  context.beginPath()
  context.rect(square.minX, square.minY, square.maxX - square.minX, square.maxY - square.minY)
  context.clip()
  paintBare(context, picture, square)
  paintAerial(context, picture)
  paintGround(context, picture, square)
  paintKeepOuts(context, picture)
  paintGroundToScout(context, picture)
  paintGaps(context, picture, square)
  paintTrees(context, picture, square, indexes)
  paintSickRings(context, picture)
  paintNumbers(context, picture, indexes)
  paintDealtTo(context, picture, indexes)
  paintFocus(context, picture)
  paintRowLabels(context, picture, square)
  paintBlockNames(context, picture, square)
  paintCalled(context, picture)
  paintBubbles(context, picture, square)
  paintMe(context, picture)
  paintOutline(context, picture)
  context.restore()
}

/** Ground without an orchard. */
export function paintBare(
  context: CanvasRenderingContext2D,
  { palette, hasTiles }: Picture,
  { minX, minY, maxX, maxY }: Box
): void {
  const size = [maxX - minX, maxY - minY] as const
  context.fillStyle = palette.ground
  if (hasTiles) context.clearRect(minX, minY, ...size)
  else context.fillRect(minX, minY, ...size)
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

/** How a block that is being laid out is painted. */

import { cornerLetter } from '@/lib/domain/orchard/corner-letter'

import type { Palette } from './palette'
import type { Point } from './plane'

/** Everything in the plane of the map. */
export type LaidOut = {
  corners: readonly Point[]
  chosen: number | null
  rows: readonly (readonly (Point & { isGap: boolean })[])[]
  sideWords: readonly string[]
  others: readonly Point[]
  stroke: readonly Point[]
  north: string
}

type Paint = {
  drawing: LaidOut
  palette: Palette
  /** On the screen. */
  at: (point: Point) => Point
  size: { width: number; height: number }
}
type Context = CanvasRenderingContext2D

/** As large as a thumb finds them. */
const cornerRPx = 18
const wholeTurn = 2 * Math.PI

export function paintLayout(context: Context, paint: Paint): void {
  const { palette, size } = paint
  context.fillStyle = palette.ground
  context.fillRect(0, 0, size.width, size.height)
  paintOthers(context, paint)
  paintGround(context, paint)
  const spacingPx = paintRows(context, paint)
  if (spacingPx >= 12) paintRowNumbers(context, paint)
  paintStroke(context, paint)
  paintSides(context, paint)
  paintCorners(context, paint)
  paintNorth(context, paint)
}

function paintOthers(context: Context, { drawing, palette, at }: Paint): void {
  context.fillStyle = palette.canopy
  for (const other of drawing.others) {
    const { x, y } = at(other)
    context.fillRect(x - 2, y - 2, 4, 4)
  }
}

function paintGround(context: Context, { drawing, palette, at }: Paint): void {
  if (drawing.corners.length < 2) return
  trace(context, drawing.corners.map(at))
  context.closePath()
  context.fillStyle = palette.block
  context.fill()
  context.strokeStyle = palette.ink
  context.lineWidth = 2.5
  context.lineJoin = 'round'
  context.stroke()
}

/** Gives the pixels between trees of a row. */
function paintRows(context: Context, { drawing, palette, at, size }: Paint): number {
  const spacingPx = spacingOf(drawing, at)
  const crownR = Math.max(1.5, Math.min(14, spacingPx * 0.42))
  const ringR = Math.max(1, Math.min(5.3, spacingPx * 0.16))
  context.strokeStyle = palette.alley
  context.lineWidth = Math.max(1, crownR * 0.3)
  for (const row of drawing.rows) {
    trace(context, row.map(at))
    context.stroke()
  }
  for (const row of drawing.rows)
    for (const tree of row) {
      const { x, y } = at(tree)
      if (x < -20 || y < -20 || x > size.width + 20 || y > size.height + 20) continue
      if (tree.isGap) paintCross(context, palette, { x, y }, ringR + 1)
      else paintTree(context, palette, { x, y }, { crownR, ringR })
    }
  return spacingPx
}

type Radii = { crownR: number; ringR: number }

function paintTree(
  context: Context,
  palette: Palette,
  { x, y }: Point,
  { crownR, ringR }: Radii
): void {
  if (crownR < 3) {
    // Thousands of them, each a dot.
    context.fillStyle = palette.canopy
    context.fillRect(x - crownR, y - crownR, 2 * crownR, 2 * crownR)
    return
  }
  disc(context, { x, y }, crownR, palette.canopy)
  disc(context, { x, y }, ringR, palette.paper)
  context.strokeStyle = palette.unpruned
  context.lineWidth = Math.max(1, ringR * 0.45)
  context.stroke()
}

function paintCross(context: Context, palette: Palette, { x, y }: Point, r: number): void {
  context.beginPath()
  context.moveTo(x - r, y - r)
  context.lineTo(x + r, y + r)
  context.moveTo(x + r, y - r)
  context.lineTo(x - r, y + r)
  context.strokeStyle = palette.text
  context.lineWidth = 2
  context.stroke()
}

/** Beyond place 1 of each row, where there is room for them. */
function paintRowNumbers(context: Context, { drawing, palette, at }: Paint): void {
  context.font = `800 13px ${palette.font}`
  context.textAlign = 'center'
  context.textBaseline = 'middle'
  context.fillStyle = palette.text
  let last: Point | null = null
  for (const [index, row] of drawing.rows.entries()) {
    const [first, second] = [row[0], row[1]].map((tree) => tree && at(tree))
    if (!first) continue
    const away = second ? { x: first.x - second.x, y: first.y - second.y } : { x: 0, y: -1 }
    const length = Math.hypot(away.x, away.y) || 1
    const spot = { x: first.x + (away.x / length) * 20, y: first.y + (away.y / length) * 20 }
    if (last && Math.hypot(spot.x - last.x, spot.y - last.y) < 20) continue
    context.fillText(String(index + 1), spot.x, spot.y)
    last = spot
  }
}

function paintStroke(context: Context, { drawing, palette, at }: Paint): void {
  if (drawing.stroke.length === 0) return
  trace(context, drawing.stroke.map(at))
  context.closePath()
  context.strokeStyle = palette.ink
  context.lineWidth = 2.5
  context.setLineDash([7, 4])
  context.stroke()
  context.setLineDash([])
}

/** How long each side is, on a label in its middle. */
function paintSides(context: Context, { drawing, palette, at }: Paint): void {
  const { corners, sideWords } = drawing
  if (corners.length < 2) return
  context.font = `650 14px ${palette.font}`
  context.textAlign = 'center'
  context.textBaseline = 'middle'
  for (const [index, words] of sideWords.entries()) {
    const [from, to] = [corners[index], corners[(index + 1) % corners.length]].map(
      (corner) => corner && at(corner)
    )
    if (!from || !to || Math.hypot(from.x - to.x, from.y - to.y) < 90) continue
    const turn = Math.atan2(to.y - from.y, to.x - from.x)
    const width = context.measureText(words).width + 16
    context.save()
    context.translate((from.x + to.x) / 2, (from.y + to.y) / 2)
    // Never upside down.
    context.rotate(Math.abs(turn) > Math.PI / 2 ? turn + Math.PI : turn)
    context.fillStyle = palette.paper
    context.fillRect(-width / 2, -12, width, 24)
    context.fillStyle = palette.ink
    context.fillText(words, 0, 1)
    context.restore()
  }
}

function paintCorners(context: Context, { drawing, palette, at }: Paint): void {
  context.font = `800 17px ${palette.font}`
  context.textAlign = 'center'
  context.textBaseline = 'middle'
  for (const [index, corner] of drawing.corners.entries()) {
    const { x, y } = at(corner)
    const isChosen = index === drawing.chosen
    disc(context, { x, y }, cornerRPx, isChosen ? palette.called : palette.ink)
    context.strokeStyle = isChosen ? palette.onCalled : palette.paper
    context.lineWidth = 3
    context.stroke()
    context.fillStyle = isChosen ? palette.onCalled : palette.onInk
    context.fillText(cornerLetter(index), x, y + 1)
  }
}

function paintNorth(context: Context, { drawing, palette, size }: Paint): void {
  const x = size.width - 36
  context.beginPath()
  context.moveTo(x, 58)
  context.lineTo(x, 22)
  context.moveTo(x - 8, 33)
  context.lineTo(x, 22)
  context.lineTo(x + 8, 33)
  context.strokeStyle = palette.ink
  context.lineWidth = 3
  context.stroke()
  context.font = `800 14px ${palette.font}`
  context.fillStyle = palette.ink
  context.fillText(drawing.north, x, 74)
}

function spacingOf({ rows }: LaidOut, at: Paint['at']): number {
  const row = rows.find(({ length }) => length > 1)
  const [a, b] = [row?.[0], row?.[1]].map((tree) => tree && at(tree))
  return a && b ? Math.hypot(a.x - b.x, a.y - b.y) : 20
}

function trace(context: Context, points: readonly Point[]): void {
  context.beginPath()
  for (const { x, y } of points) context.lineTo(x, y)
}

function disc(context: Context, { x, y }: Point, r: number, colour: string): void {
  context.beginPath()
  context.arc(x, y, r, 0, wholeTurn)
  context.fillStyle = colour
  context.fill()
}

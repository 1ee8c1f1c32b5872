/** What is written on the map: numbers of places and rows, names of blocks, initials. */

import { blockNames, type Plate } from './block-names'
import type { Box } from './grid-index'
import type { Picture } from './paint'
import { isPictured } from './paint-aerial'
import { labelPx, rowLabels } from './row-labels'
import { meet, toCanvas } from './view'

export function paintNumbers(
  context: CanvasRenderingContext2D,
  { scene, view, sizes, palette, called, dimmed }: Picture,
  indexes: readonly number[]
): void {
  if (!sizes.hasNumbers) return
  write(context, `650 13px ${palette.font}`, palette.text)
  for (const index of indexes) {
    const tree = scene.trees[index]
    if (!tree || tree.no === called || dimmed.has(tree.no)) continue
    const { x, y } = toCanvas(view, scene.xs[index] ?? 0, scene.ys[index] ?? 0)
    context.fillText(String(tree.place), x, y + sizes.markPx * 0.5 + 9)
  }
}

/** Above a tree that is kept for somebody: their initials. */
export function paintDealtTo(
  context: CanvasRenderingContext2D,
  { scene, looks, view, sizes, palette, dimmed }: Picture,
  indexes: readonly number[]
): void {
  if (!sizes.hasNumbers) return
  write(context, `800 13px ${palette.font}`, palette.text)
  for (const index of indexes) {
    const to = looks.dealtTo(index)
    if (to.length === 0 || dimmed.has(scene.trees[index]?.no ?? 0)) continue
    const { x, y } = toCanvas(view, scene.xs[index] ?? 0, scene.ys[index] ?? 0)
    context.fillText(to.join(' '), x, y - sizes.markPx * 0.5 - 9)
  }
}

export function paintRowLabels(
  context: CanvasRenderingContext2D,
  { scene, view, sizes, palette, called, selected }: Picture,
  square: Box
): void {
  const calledIndex = scene.indexOf.get(called ?? Number.NaN)
  const { width, height } = labelPx
  for (const { row, x, y, onTrees } of rowLabels(scene, view, sizes)) {
    if (!meet(boxAround(x, y, width), square)) continue
    const isCalled = calledIndex !== undefined && row.indexes.includes(calledIndex)
    const isPicked = row.indexes.every((index) => selected.has(scene.trees[index]?.no ?? 0))
    const isInk = isCalled || isPicked
    if (!sizes.hasRowPlates && !onTrees && !isInk) {
      write(context, `650 13px ${palette.font}`, palette.text)
      context.fillText(String(row.row), x, y + 1)
      continue
    }
    context.fillStyle = isInk ? palette.ink : palette.paper
    context.beginPath()
    context.roundRect(x - width / 2, y - height / 2, width, height, 4)
    context.fill()
    write(context, `800 15px ${palette.font}`, isInk ? palette.onInk : palette.ink)
    context.fillText(String(row.row), x, y + 1)
  }
}

export function paintBlockNames(
  context: CanvasRenderingContext2D,
  picture: Picture,
  square: Box
): void {
  const { scene, view, palette, notSurveyed } = picture
  const fonts = { name: `800 15px ${palette.font}`, plate: `650 13px ${palette.font}` }
  const widthIn = (font: string) => (words: string) => {
    context.font = font
    return context.measureText(words).width
  }
  const measure = { name: widthIn(fonts.name), plate: widthIn(fonts.plate) }
  for (const { block, plate, x, y } of blockNames(scene, view, { notSurveyed, measure })) {
    const { name } = block.block
    if (plate && meet(boxAround(plate.x, plate.y, plate.width), square)) {
      write(context, fonts.plate, palette.text)
      paintPlate(context, palette, plate)
    }
    if (!meet(boxAround(x, y, 400), square)) continue
    write(context, fonts.name, palette.text)
    if (isPictured(picture)) paintHalo(context, palette, { words: name, x, y })
    context.fillText(name, x, y)
  }
}

/** Round what is written over a picture, which may be of any colour. */
function paintHalo(
  context: CanvasRenderingContext2D,
  palette: Picture['palette'],
  { words, x, y }: { words: string; x: number; y: number }
): void {
  context.strokeStyle = palette.ground
  context.lineWidth = 5
  context.lineJoin = 'round'
  context.strokeText(words, x, y)
  context.lineJoin = 'miter'
}

/** Dashed: what is drawn here is a list, not a place. */
function paintPlate(
  context: CanvasRenderingContext2D,
  palette: Picture['palette'],
  { lines, x, y, width, height }: Plate
): void {
  context.beginPath()
  context.roundRect(x - width / 2, y - height / 2, width, height, 4)
  context.globalAlpha = 0.8
  context.fillStyle = palette.ground
  context.fill()
  context.globalAlpha = 1
  context.strokeStyle = palette.text
  context.lineWidth = 1.5
  context.setLineDash([4, 3])
  context.stroke()
  context.setLineDash([])
  context.fillStyle = palette.text
  const linePx = (height - 6) / lines.length
  for (const [at, line] of lines.entries())
    context.fillText(line, x, y - height / 2 + 4 + linePx * (at + 0.5))
}

/** The one tree that steps forward from its row. */
export function paintCalled(
  context: CanvasRenderingContext2D,
  { scene, view, palette, called }: Picture
): void {
  const index = scene.indexOf.get(called ?? Number.NaN)
  if (index === undefined) return
  const point = toCanvas(view, scene.xs[index] ?? 0, scene.ys[index] ?? 0)
  const { x, y } = { x: point.x, y: point.y - 12 }
  context.beginPath()
  context.moveTo(x - 17, y - 20)
  context.lineTo(x + 17, y - 20)
  context.lineTo(x + 17, y + 5)
  context.lineTo(x, y + 22)
  context.lineTo(x - 17, y + 5)
  context.closePath()
  context.fillStyle = palette.called
  context.fill()
  context.strokeStyle = palette.onCalled
  context.lineWidth = 3.5
  context.lineJoin = 'round'
  context.stroke()
  context.lineJoin = 'miter'
  write(context, `800 19px ${palette.font}`, palette.onCalled)
  context.fillText(String(scene.trees[index]?.place ?? ''), x, y - 2)
}

export function paintBubbles(
  context: CanvasRenderingContext2D,
  { scene, bubbles, sizes, palette, long }: Picture,
  square: Box
): void {
  context.strokeStyle = palette.ink
  context.lineWidth = 1.5
  context.beginPath()
  for (const { x, y, tree } of bubbles) {
    // From the edge of the mark, which it must not cross out.
    const markShare = (sizes.markPx * 0.5) / Math.hypot(x - tree.x, y - tree.y)
    context.moveTo(tree.x + (x - tree.x) * markShare, tree.y + (y - tree.y) * markShare)
    context.lineTo(x, y)
  }
  context.stroke()
  for (const { x, y, index, initials, isCalling } of bubbles) {
    if (!meet(boxAround(x, y, 2 * sizes.bubbleR + (isCalling ? 26 : 4)), square)) continue
    // Inside out: they have been there for long.
    const isLong = long.has(scene.trees[index]?.no ?? 0)
    context.beginPath()
    context.arc(x, y, sizes.bubbleR, 0, 2 * Math.PI)
    context.fillStyle = isLong ? palette.paper : palette.ink
    context.fill()
    context.strokeStyle = isLong ? palette.ink : palette.paper
    context.lineWidth = 2
    context.stroke()
    if (isCalling) paintRings(context, palette, { x, y, r: sizes.bubbleR })
    write(
      context,
      `800 ${sizes.bubbleR * 0.86}px ${palette.font}`,
      isLong ? palette.ink : palette.onInk
    )
    context.fillText(initials, x, y + 1)
  }
}

/** Somebody calls for help: two rings, each with paper on both sides, so that they show on any ground. */
function paintRings(
  context: CanvasRenderingContext2D,
  { paper, ink }: Picture['palette'],
  { x, y, r }: { x: number; y: number; r: number }
): void {
  for (const [colour, width] of [
    [paper, 6],
    [ink, 2.5],
  ] as const) {
    context.strokeStyle = colour
    context.lineWidth = width
    for (const away of ringsPx) {
      context.beginPath()
      context.arc(x, y, r + away, 0, 2 * Math.PI)
      context.stroke()
    }
  }
}

/** How far outside the disc. */
const ringsPx = [4, 9]

function write(context: CanvasRenderingContext2D, font: string, colour: string): void {
  context.font = font
  context.fillStyle = colour
  context.textAlign = 'center'
  context.textBaseline = 'middle'
}

function boxAround(x: number, y: number, side: number): Box {
  return { minX: x - side / 2, maxX: x + side / 2, minY: y - side / 2, maxY: y + side / 2 }
}

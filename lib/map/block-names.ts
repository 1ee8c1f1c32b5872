/** Where the names of blocks are written, and that one was not surveyed: over no name of another. */

import type { Box } from './grid-index'
import type { Point } from './plane'
import type { Scene, SceneBlock } from './scene'
import { meet, toCanvas, type View } from './view'

/** Lines of words in a dashed frame, round its middle. */
export type Plate = Point & { lines: readonly string[]; width: number; height: number }

export type BlockName = Point & { block: SceneBlock; plate: Plate | null }

/** How wide words are, in the letters of names and in those of plates. */
export type Measure = { name: (words: string) => number; plate: (words: string) => number }

const nameHeight = 20
const linePx = 16

export function blockNames(
  { blocks, plane }: Pick<Scene, 'blocks' | 'plane'>,
  view: View,
  { notSurveyed, measure }: { notSurveyed: string; measure: Measure }
): BlockName[] {
  const edgePx = blockEdgePx(plane.unitsPerM, view)
  const names = blocks.map((block): BlockName => {
    const { x, y } = toCanvas(view, (block.box.minX + block.box.maxX) / 2, block.box.minY)
    return { block, plate: null, x, y: y - edgePx - 12 }
  })
  for (const [at, name] of names.entries()) {
    if (name.block.surveyed) continue
    const others = names
      .filter((other) => other !== name)
      .flatMap((other) => boxesOf(other, measure))
    const places = placesFor(name, view, { edgePx, notSurveyed, measure })
    const isFree = (place: BlockName) =>
      boxesOf(place, measure).every((box) => others.every((other) => !meet(box, other)))
    names[at] = places.find(isFree) ?? places.at(-1) ?? name
  }
  return names
}

/** The ground that is drawn round the outermost trees. */
export function blockEdgePx(unitsPerM: number, { scale }: View): number {
  return Math.max(10, 4.5 * unitsPerM * scale)
}

type Words = { edgePx: number; notSurveyed: string; measure: Measure }

/** Under its name, or below the block, as near as there is room. */
function placesFor(name: BlockName, view: View, words: Words): BlockName[] {
  const { edgePx, notSurveyed, measure } = words
  const { minX, maxX, maxY } = name.block.box
  const widthPx = (maxX - minX) * view.scale + 2 * edgePx
  const widthOf = (line: string) => measure.plate(line) + 10
  // On two lines where it is wider than its block.
  const lines = widthOf(notSurveyed) > widthPx ? notSurveyed.split(/(?<=:) /) : [notSurveyed]
  const height = linePx * lines.length + 6
  const size = { lines, height, width: Math.max(...lines.map(widthOf)) }
  const plateAt = (y: number): Plate => ({ ...size, x: name.x, y })
  const foot = toCanvas(view, 0, maxY).y + edgePx
  const below = (furtherPx: number) => ({
    ...name,
    plate: plateAt(foot + 4 + height / 2 + furtherPx),
  })
  return [
    { ...name, plate: plateAt(name.y + 11 - height / 2), y: name.y - height - 2 },
    ...[0, 12, 24, 36, 48].map(below),
  ]
}

function boxesOf({ block, plate, x, y }: BlockName, measure: Measure): Box[] {
  const name = boxAround({ x, y }, measure.name(block.block.name), nameHeight)
  return plate ? [name, boxAround(plate, plate.width, plate.height)] : [name]
}

function boxAround({ x, y }: Point, width: number, height: number): Box {
  return { minX: x - width / 2, maxX: x + width / 2, minY: y - height / 2, maxY: y + height / 2 }
}

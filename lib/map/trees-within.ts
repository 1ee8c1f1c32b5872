/** The trees inside a shape that was drawn on the map. */

import { isInside } from '@/lib/domain/orchard/drawn-shape'

import { boxOf } from './grid-index'
import type { Point } from './plane'
import type { Scene } from './scene'

/** Their numbers, in the order of the scene. Corners are of its plane. */
export function treesWithin(scene: Scene, shape: readonly Point[]): number[] {
  if (shape.length < 3) return []
  const box = boxOf(
    shape.map(({ x }) => x),
    shape.map(({ y }) => y)
  )
  return scene.index
    .within(box)
    .filter((index) => isInside(shape, { x: scene.xs[index] ?? 0, y: scene.ys[index] ?? 0 }))
    .toSorted((a, b) => a - b)
    .flatMap((index) => scene.trees[index]?.no ?? [])
}

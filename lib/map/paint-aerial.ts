/** The orchard's own picture from above, under everything else. */

import { type Affine, affineBy } from '@/lib/domain/orchard/affine'
import type { Position } from '@/lib/domain/orchard/types'

import type { Picture } from './paint'
import type { Plane } from './plane'

/** Where a point of the picture lies on the earth; x and y in its own pixels. */
export type AerialPoint = { x: number; y: number; position: Position }

export type Aerial = {
  image: CanvasImageSource
  points: readonly [AerialPoint, AerialPoint, AerialPoint]
  /** 0 to 1 */
  opacity: number
}

export function paintAerial(
  context: CanvasRenderingContext2D,
  { scene, view, aerial }: Pick<Picture, 'scene' | 'view' | 'aerial'>
): void {
  const onPlane = aerial && aerialOnPlane(aerial, scene.plane)
  if (!onPlane) return
  const { scale, originX, originY } = view
  context.save()
  context.globalAlpha = aerial.opacity
  // Multiplied here: a canvas reckons in single precision, and the plane's origin is ten million pixels away.
  const { a, b, c, d, e, f } = onPlane
  const [right, down] = [scale * e - originX, scale * f - originY]
  context.transform(scale * a, scale * b, scale * c, scale * d, right, down)
  context.drawImage(aerial.image, 0, 0)
  context.restore()
}

function aerialOnPlane({ points }: Aerial, plane: Plane): Affine | null {
  const pairOf = ({ x, y, position }: AerialPoint) => ({
    from: { x, y },
    to: plane.pointOf(position),
  })
  const [first, second, third] = points
  return affineBy([pairOf(first), pairOf(second), pairOf(third)])
}

/** Ground that can be seen: the blocks are then only tinted, and their names stand on a halo. */
export function isPictured({ aerial, hasTiles }: Pick<Picture, 'aerial' | 'hasTiles'>): boolean {
  return aerial !== null || hasTiles
}

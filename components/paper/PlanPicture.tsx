'use client'

import { affineBy } from '@/lib/domain/orchard/affine'
import type { PaperPlan } from './paper-plan'
import type { PictureOnPaper } from './use-picture-on-paper'

/** Fainter than on a screen: what stands on it must be read in black and white. */
const mostOpacity = 0.6

/** The orchard's own picture, laid under the drawing by its three trees. */
export function PlanPicture({ picture, plan }: { picture: PictureOnPaper; plan: PaperPlan }) {
  const [first, second, third] = picture.points.map(([x, y, lat, lon]) => ({
    from: { x: x / 10_000, y: y / 10_000 },
    to: plan.at({ lat: lat / 1e7, lon: lon / 1e7 }),
  }))
  const affine = first && second && third ? affineBy([first, second, third]) : null
  if (!affine) return null
  const { a, b, c, d, e, f } = affine
  return (
    // One unit wide and high, however many pixels it has: its points are shares of its sides.
    <image
      href={`data:image/jpeg;base64,${picture.jpeg}`}
      width={1}
      height={1}
      preserveAspectRatio="none"
      opacity={Math.min(mostOpacity, picture.opacity / 100)}
      transform={`matrix(${a} ${b} ${c} ${d} ${e} ${f})`}
    />
  )
}

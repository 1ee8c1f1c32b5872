/** The disease map: the ground to look over round the sick trees, and what is confirmed or only suspected. */

import type { Picture } from './paint'
import { canopyPx, toCanvas } from './view'

export type DiseaseShown = {
  /** Numbers of trees. */
  confirmed: ReadonlySet<number>
  suspected: ReadonlySet<number>
  toScout: ReadonlySet<number>
}

/** Below the trees: one ground of all that is to be looked over, without an edge between two trees. */
export function paintGroundToScout(
  context: CanvasRenderingContext2D,
  { scene, view, palette, disease }: Picture
): void {
  if (!disease || disease.toScout.size === 0) return
  const reach = Math.max(scene.spacing, scene.rowSpacing) * view.scale * 0.62
  context.beginPath()
  for (const no of disease.toScout) {
    const index = scene.indexOf.get(no)
    if (index === undefined) continue
    const { x, y } = toCanvas(view, scene.xs[index] ?? 0, scene.ys[index] ?? 0)
    context.moveTo(x + reach, y)
    context.arc(x, y, reach, 0, 2 * Math.PI)
  }
  context.globalAlpha = 0.22
  context.fillStyle = palette.disease
  context.fill()
  context.globalAlpha = 1
}

/** Above the trees: a whole ring is confirmed, a broken one suspected, so that no colour is needed. */
export function paintSickRings(context: CanvasRenderingContext2D, picture: Picture): void {
  const { scene, view, sizes, palette, disease } = picture
  if (!disease) return
  const ring = (trees: ReadonlySet<number>, dash: number[]) => {
    context.beginPath()
    for (const no of trees) {
      const index = scene.indexOf.get(no)
      if (index === undefined) continue
      const { x, y } = toCanvas(view, scene.xs[index] ?? 0, scene.ys[index] ?? 0)
      const radius = canopyPx(scene.canopyR[index] ?? 0, view, sizes) + 3
      context.moveTo(x + radius, y)
      context.arc(x, y, radius, 0, 2 * Math.PI)
    }
    context.setLineDash(dash)
    context.stroke()
  }
  context.strokeStyle = palette.disease
  context.lineWidth = 3
  ring(disease.confirmed, [])
  ring(disease.suspected, [4, 4])
  context.setLineDash([])
}

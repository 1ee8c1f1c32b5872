/** Thickness and length as a slider has them: whole steps of the reader's own unit, so that nothing drifts. */

import type { Units } from '@/lib/text/format'

export type WoodScale = { stepCm: number; least: number; most: number; usual: number }

const inchCm = 2.54

/** Half centimetres to 15 cm, quarter inches to 6. */
export const thicknessScale: Record<Units, WoodScale> = {
  metric: { stepCm: 0.5, least: 1, most: 30, usual: 6 },
  us: { stepCm: inchCm / 4, least: 1, most: 24, usual: 5 },
}

/** Steps of 5 cm to 1.5 m, of 2 in to 5 ft. */
export const lengthScale: Record<Units, WoodScale> = {
  metric: { stepCm: 5, least: 2, most: 30, usual: 12 },
  us: { stepCm: inchCm * 2, least: 2, most: 30, usual: 12 },
}

/** What is exact stays, although it is no binary fraction. */
export function centimetresOf({ stepCm }: WoodScale, steps: number): number {
  return Number((steps * stepCm).toFixed(6))
}

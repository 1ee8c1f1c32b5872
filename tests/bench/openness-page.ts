/** Runs in the browser: one and a half megapixels of crown and sky, measured. */

import { type Openness, opennessOf } from '@/lib/domain/pruning/openness'

import { canopyPicture, greySky } from '../lib/domain/pruning/a-canopy'

export type Measured = { ms: number; errorPoints: number }

const bark = [48, 40, 34] as const
let made: ReturnType<typeof canopyPicture> | null = null

const bench = {
  /** Outside the clock. */
  make(): void {
    made = canopyPicture({ side: 1224, gap: 0.4, sky: greySky, bark, noise: 10, vignette: 0.4 })
  },
  measure(): Measured {
    if (!made) throw new Error('Make a picture first.')
    const start = performance.now()
    const found = opennessOf(made)
    const ms = performance.now() - start
    return { ms, errorPoints: 100 * Math.abs((found as Openness).gap - made.gap) }
  },
}

export type OpennessBench = typeof bench
Object.assign(window, { bench })

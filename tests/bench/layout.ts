/** Laying out a block: what each tree costs, for a thousand, ten thousand and a hundred thousand. */

import { sheetAround } from '../../lib/domain/orchard/ellipsoid'
import { type LayoutPlan, layOut } from '../../lib/domain/orchard/layout'
import { atMost, type Figure, ms, noted, share } from './figures'

const sizes = [1_000, 10_000, 100_000] as const
const spacing = { rowSpacingM: 5, treeSpacingM: 4 }
const runs = 7

/** The middle of several runs, after one that warms up. */
export function layoutFigures(): Figure[] {
  const measured = sizes.map((trees) => ({ trees, took: middleRun(planFor(trees)) }))
  const [small, , large] = measured.map(({ trees, took }) => took / trees)
  return [
    ...measured.map(({ trees, took }) =>
      // While one types: within two frames for any block there is.
      trees === 10_000
        ? atMost(`${trees} trees, while one types`, took, 100, ms)
        : noted(`${trees} trees`, ms(took))
    ),
    atMost(
      'A tree among 100,000 against one among 1,000',
      (large ?? 0) / (small ?? 1),
      2,
      (times) => `${times.toFixed(2)} ×`
    ),
  ]
}

function middleRun(plan: LayoutPlan): number {
  layOut(plan, sizes[2] * 2)
  const times = Array.from({ length: runs }, () => {
    const started = performance.now()
    layOut(plan, sizes[2] * 2)
    return performance.now() - started
  })
  return share(times, 0.5)
}

/** A tilted square that holds about so many. */
function planFor(trees: number): LayoutPlan {
  const sideM = Math.sqrt(trees * spacing.rowSpacingM * spacing.treeSpacingM)
  const { toGround } = sheetAround({ lat: 41.2, lon: -2.8 })
  const corners = [
    { eastM: 0, northM: 0 },
    { eastM: 0, northM: sideM },
    { eastM: sideM, northM: sideM },
    { eastM: sideM, northM: 0 },
  ].map(toGround)
  return {
    corners,
    ...spacing,
    pattern: 'rectangular',
    bearingDeg: 3,
    headlandM: 3,
    firstRowM: null,
    rowsFrom: 'left',
    placesFrom: 'start',
    serpentine: false,
    empty: [],
  }
}

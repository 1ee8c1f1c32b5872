import { area } from '@turf/area'
import { booleanPointInPolygon } from '@turf/boolean-point-in-polygon'
import { pointToLineDistance } from '@turf/point-to-line-distance'
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'

import { distanceM } from '@/lib/domain/orchard/distance'
import { sheetAround } from '@/lib/domain/orchard/ellipsoid'
import { mostTrees } from '@/lib/domain/orchard/inventory-table'
import { type Layout, type LayoutPlan, layOut, mostTreesInBlock } from '@/lib/domain/orchard/layout'
import { inWalkingOrder, outlineFault } from '@/lib/domain/orchard/outline'
import type { Position } from '@/lib/domain/orchard/types'
import { groupBy } from '@/lib/util/group-by'

const middle = { lat: 41.2, lon: -2.8 }
const { toGround } = sheetAround(middle)
const corners = (...points: [east: number, north: number][]) =>
  points.map(([eastM, northM]) => toGround({ eastM, northM }))

const plan: LayoutPlan = {
  corners: corners([0, 0], [0, 60], [40, 60], [40, 0]),
  pattern: 'rectangular',
  rowSpacingM: 5,
  treeSpacingM: 4,
  bearingDeg: 0,
  firstRowM: null,
  headlandM: 0,
  rowsFrom: 'left',
  placesFrom: 'start',
  serpentine: false,
  empty: [],
}

function laid(changes: Partial<LayoutPlan> = {}): Layout {
  const layout = layOut({ ...plan, ...changes })
  if ('code' in layout) throw new Error(layout.code)
  return layout
}

const at = (layout: Layout, row: number, place: number) => {
  const tree = layout.trees.find((one) => one.row === row && one.place === place)
  if (!tree) throw new Error(`no tree ${row}·${place}`)
  return tree.position
}

describe('forty metres by sixty', () => {
  // Counted by hand: 40 / 5 + 1 rows of 60 / 4 + 1 trees.
  test('trees to the very edge', () => {
    const layout = laid()

    expect(layout).toMatchObject({ rows: 9, inRow: { least: 16, most: 16 }, gaps: 0 })
    expect(layout.trees).toHaveLength(9 * 16)
    expect(layout.areaM2).toBeCloseTo(2400, 1)
  })

  // Likewise: 30 / 5 + 1 rows of ⌊50 / 4⌋ + 1.
  test('a headland of five metres', () => {
    expect(laid({ headlandM: 5 })).toMatchObject({ rows: 7, inRow: { least: 13, most: 13 } })
  })

  test('the first row by itself', () => {
    const layout = laid({ headlandM: 2, firstRowM: 6 })

    const [left, bottom] = [toGround({ eastM: 6, northM: 0 }), toGround({ eastM: 6, northM: 2 })]
    expect(distanceM(at(layout, 1, 1), bottom)).toBeLessThan(0.01)
    expect(distanceM(at(layout, 1, 1), left)).toBeCloseTo(2, 2)
  })

  test('offset rows stand in between, and are one tree shorter where that does not fit', () => {
    const layout = laid({ pattern: 'offset' })

    expect(layout.inRow).toEqual({ least: 15, most: 16 })
    expect(distanceM(at(layout, 1, 1), at(layout, 2, 1))).toBeCloseTo(Math.hypot(5, 2), 1)
  })

  test('hexagonal: six neighbours at one distance', () => {
    const layout = laid({ pattern: 'hexagonal' })
    const { position } = layout.trees.find(({ row, place }) => row === 3 && place === 4) ?? {
      position: middle,
    }

    const near = layout.trees.filter((tree) => {
      const metres = distanceM(tree.position, position)
      return metres > 0.1 && metres < 4.1
    })
    expect(near).toHaveLength(6)
    expect(layout.spacing.rowSpacingM).toBeCloseTo(4 * 0.8660254, 6)
  })

  test('row 1 place 1 is at the corner that was asked for', () => {
    const far = { rowsFrom: 'right', placesFrom: 'end' } as const

    expect(distanceM(at(laid(), 1, 1), toGround({ eastM: 0, northM: 0 }))).toBeLessThan(0.01)
    const corner = at(laid(far), 1, 1)
    expect(distanceM(corner, toGround({ eastM: 40, northM: 60 }))).toBeLessThan(0.01)
    expect(laid(far).bearingDeg).toBe(180)
  })

  test('counted as one walks: up the first row, down the second', () => {
    const layout = laid({ serpentine: true })

    expect(distanceM(at(layout, 1, 16), at(layout, 2, 1))).toBeCloseTo(5, 1)
    expect(distanceM(at(layout, 2, 16), at(layout, 3, 1))).toBeCloseTo(5, 1)
  })

  test('places in a pond stay empty and keep their numbers', () => {
    const pond = corners([9, 9], [9, 21], [21, 21], [21, 9])

    const layout = laid({ empty: [pond] })

    // By hand: rows at 10, 15, 20 m, places at 12, 16, 20 m.
    expect(layout.gaps).toBe(9)
    expect(layout.trees).toHaveLength(9 * 16)
  })

  test('an outline that turns inwards breaks its rows', () => {
    const notched = corners(
      [0, 0],
      [0, 60],
      [40, 60],
      [40, 40],
      [20, 40],
      [20, 20],
      [40, 20],
      [40, 0]
    )

    const layout = laid({ corners: notched })

    const row7 = layout.trees.filter(({ row }) => row === 7)
    expect(row7.map(({ place }) => place)).toEqual(row7.map((_, index) => index + 1))
    // By hand: 0 to 20 m and 40 to 60 m, six trees each.
    expect(row7).toHaveLength(12)
  })
})

describe('what is refused', () => {
  test.each<[string, Partial<LayoutPlan>, object]>([
    ['no spacing', { treeSpacingM: 0 }, { code: 'out_of_range', field: 'treeSpacingM' }],
    ['no number', { rowSpacingM: Number.NaN }, { code: 'out_of_range', field: 'rowSpacingM' }],
    ['feet by the hundred', { rowSpacingM: 200 }, { code: 'out_of_range', field: 'rowSpacingM' }],
    ['a bearing past north', { bearingDeg: 361 }, { code: 'out_of_range', field: 'bearingDeg' }],
    ['a headland outwards', { headlandM: -1 }, { code: 'out_of_range', field: 'headlandM' }],
    ['no room between the headlands', { headlandM: 25 }, { code: 'no_room' }],
    [
      'corners crosswise',
      { corners: corners([0, 0], [40, 60], [0, 60], [40, 0]) },
      { code: 'crosses_itself' },
    ],
  ])('%s', (_, changes, fault) => {
    expect(layOut({ ...plan, ...changes })).toMatchObject(fault)
  })

  test('one tree more than the referee takes at once', () => {
    // 316 rows of 316 and 317 places of 317, by a metre.
    const square = (sideM: number) => ({
      ...plan,
      corners: corners([0, 0], [0, sideM], [sideM, sideM], [sideM, 0]),
      ...{ rowSpacingM: 1, treeSpacingM: 1, headlandM: 0, bearingDeg: 0, firstRowM: null },
    })

    expect(layOut(square(315.2))).toMatchObject({ rows: 316 })
    expect(layOut(square(316.2))).toMatchObject({
      code: 'too_many_trees',
      about: expect.closeTo(317 ** 2, -3),
    })
    expect(mostTreesInBlock).toBe(mostTrees)
  })

  test('ten million trees, at once and without making any', () => {
    const wide = corners([0, 0], [0, 3000], [3000, 3000], [3000, 0])
    const started = performance.now()

    const fault = layOut({ ...plan, corners: wide, rowSpacingM: 1, treeSpacingM: 0.9 })

    expect(fault).toMatchObject({ code: 'too_many_trees', about: expect.closeTo(1e7, -3) })
    expect(performance.now() - started).toBeLessThan(100)
  })
})

/** Any outline round a middle, also one that turns inwards. */
const anOutline = fc
  .tuple(
    fc.record({
      lat: fc.double({ min: -60, max: 66, noNaN: true }),
      lon: fc.oneof(fc.double({ min: -180, max: 180, noNaN: true }), fc.constant(180)),
    }),
    fc.array(fc.double({ min: 12, max: 90, noNaN: true }), { minLength: 3, maxLength: 9 })
  )
  .map(([centre, radii]) => {
    const sheet = sheetAround(centre)
    return radii.map((metres, index) => {
      const angle = (2 * Math.PI * index) / radii.length
      return sheet.toGround({
        eastM: metres * Math.sin(angle),
        northM: metres * Math.cos(angle),
      })
    })
  })
const aPlan = fc.record({
  corners: anOutline,
  pattern: fc.constantFrom('rectangular', 'square', 'offset', 'hexagonal'),
  rowSpacingM: fc.double({ min: 3, max: 9, noNaN: true }),
  treeSpacingM: fc.double({ min: 2, max: 9, noNaN: true }),
  bearingDeg: fc.double({ min: 0, max: 360, noNaN: true }),
  firstRowM: fc.option(fc.double({ min: 0, max: 10, noNaN: true })),
  headlandM: fc.oneof(fc.constant(0), fc.double({ min: 0, max: 8, noNaN: true })),
  rowsFrom: fc.constantFrom('left', 'right'),
  placesFrom: fc.constantFrom('start', 'end'),
  serpentine: fc.boolean(),
  empty: fc.constant([]),
}) satisfies fc.Arbitrary<LayoutPlan>

/** Where a longitude is continuous for turf, which knows no antimeridian. */
const ringOf = (outline: readonly Position[]) =>
  [...outline, outline[0] ?? middle].map(({ lat, lon }) => [
    lon - 360 * Math.round((lon - (outline[0]?.lon ?? 0)) / 360),
    lat,
  ])
const pointOf = ({ lat, lon }: Position, outline: readonly Position[]) => [
  lon - 360 * Math.round((lon - (outline[0]?.lon ?? 0)) / 360),
  lat,
]

// turf (7.4.0) as the reference for inside and for how far from a side; it counts on a sphere, hence half a per cent.
describe('whatever the outline and the plan', () => {
  test('every tree is inside, with its headland, and no place is given twice', () => {
    fc.assert(
      fc.property(aPlan, (drawn) => {
        const layout = layOut(drawn)
        if ('code' in layout) return
        const ring = ringOf(drawn.corners)

        const places = new Set(layout.trees.map(({ row, place }) => `${row} ${place}`))
        expect(places.size).toBe(layout.trees.length)
        for (const tree of layout.trees) {
          const point = pointOf(tree.position, drawn.corners)
          const awayM = 1000 * pointToLineDistance(point, { type: 'LineString', coordinates: ring })
          const isIn = booleanPointInPolygon(point, { type: 'Polygon', coordinates: [ring] })
          // Rounded to a centimetre as it is kept.
          if (!isIn) expect(awayM).toBeLessThan(0.015)
          else expect(awayM).toBeGreaterThan(drawn.headlandM * 0.994 - 0.015)
        }
      }),
      { numRuns: 60 }
    )
  })

  test('neighbours in a row stand at the spacing, or at a multiple where the outline breaks the row', () => {
    fc.assert(
      fc.property(aPlan, (drawn) => {
        const layout = layOut(drawn)
        if ('code' in layout) return

        for (const row of groupBy(layout.trees, (tree) => tree.row).values()) {
          const inOrder = row.toSorted((a, b) => a.place - b.place)
          for (const [index, tree] of inOrder.entries()) {
            const next = inOrder[index + 1]
            if (!next) continue
            const spacings = distanceM(tree.position, next.position) / layout.spacing.treeSpacingM
            expect(spacings).toBeGreaterThan(0.9)
            // A hundredth of a degree's last digit at both ends.
            expect(Math.abs(spacings - Math.round(spacings))).toBeLessThan(
              0.016 / layout.spacing.treeSpacingM
            )
          }
        }
      }),
      { numRuns: 60 }
    )
  })

  test('no two trees are nearer than the nearer spacing allows', () => {
    fc.assert(
      fc.property(aPlan, (drawn) => {
        const layout = layOut(drawn)
        if ('code' in layout || layout.trees.length > 400) return
        const { rowSpacingM, treeSpacingM } = layout.spacing

        const least = Math.min(rowSpacingM, treeSpacingM) - 0.02
        for (const [index, a] of layout.trees.entries())
          for (const b of layout.trees.slice(index + 1))
            if (distanceM(a.position, b.position) < least)
              expect([a.row, a.place, b.row, b.place]).toEqual([])
      }),
      { numRuns: 30 }
    )
  })

  test('the area is turf’s, to the half per cent of a sphere', () => {
    fc.assert(
      fc.property(anOutline, (outline) => {
        if (outlineFault(outline)) return
        const layout = layOut({ ...plan, corners: outline })
        if ('code' in layout) return

        const onSphere = area({ type: 'Polygon', coordinates: [ringOf(outline)] })

        expect(Math.abs(layout.areaM2 / onSphere - 1)).toBeLessThan(0.008)
      })
    )
  })

  test('as many trees as area and spacing say, for a block without edges to speak of', () => {
    const wide = inWalkingOrder(corners([0, 0], [500, 0], [500, 400], [0, 400]))

    const { trees } = laid({ corners: wide, rowSpacingM: 5, treeSpacingM: 4, bearingDeg: 33 })

    expect(Math.abs(trees.length / (200_000 / 20) - 1)).toBeLessThan(0.01)
  })
})

import { describe, expect, test } from 'vitest'

import { step } from '@/lib/domain/orchard/distance'
import type { Look } from '@/lib/domain/orchard/status'
import { type Arrow, treeTowards } from '@/lib/map/focus'
import { looksOf } from '@/lib/map/looks'
import { bubblesOf } from '@/lib/map/people'
import { rowLabels } from '@/lib/map/row-labels'
import { type Scene, sceneOf } from '@/lib/map/scene'
import { tappedAt } from '@/lib/map/tapped'
import { sizesAt, toCanvas, type View } from '@/lib/map/view'
import { PagedMap } from '@/lib/util/paged-map'

import { aBlock, someField, treesOf } from '../domain/an-orchard'

// Rows run north, row 2 is east of row 1. Numbers run along the rows: 1 to 4, 5 to 8, 9 to 12.
const block = aBlock()
const trees = treesOf(['TTTT', 'T.TT', 'TTTT'])
const scene = sceneOf(trees, [block])

/** The whole scene, with so many pixels between neighbours in a row. */
function viewOf(whole: Scene, spacingPx: number): View {
  const scale = spacingPx / whole.spacing
  const margin = 60
  return {
    scale,
    originX: whole.box.minX * scale - margin,
    originY: whole.box.minY * scale - margin,
    sharpness: 2,
    screen: { minX: 0, minY: 0, maxX: 1000, maxY: 1000 },
  }
}

function pixelOf(no: number, view: View) {
  const index = scene.indexOf.get(no) ?? Number.NaN
  return toCanvas(view, scene.xs[index] ?? Number.NaN, scene.ys[index] ?? Number.NaN)
}

test('a scene has the trees that stand, and none for gaps', () => {
  expect(scene.trees.map((tree) => tree.no)).toEqual([1, 2, 3, 4, 5, 7, 8, 9, 10, 11, 12])
  expect(scene.rows.map((row) => row.indexes.length)).toEqual([4, 3, 4])
})

test('an orchard without trees is an empty scene', () => {
  expect(sceneOf([], []).trees).toEqual([])
  expect(sceneOf([], [block]).blocks).toEqual([])
})

test('a block without positions is marked as not surveyed', () => {
  const lost = aBlock({ no: 2, firstTree: null })
  const both = sceneOf([...trees, ...treesOf(['TT'], lost, 20)], [block, lost])

  expect(both.blocks.map(({ surveyed }) => surveyed)).toEqual([true, false])
})

describe('a tap', () => {
  const view = viewOf(scene, 60)

  test('on a tree, or near it, means that tree', () => {
    const { x, y } = pixelOf(7, view)

    expect(tappedAt(scene, view, { x, y })).toMatchObject({ kind: 'tree', tree: { no: 7 } })
    expect(tappedAt(scene, view, { x: x + 18, y: y - 18 })).toMatchObject({ tree: { no: 7 } })
  })

  test('on a gap, farther than a thumb from any tree, means nothing', () => {
    const [below, above] = [pixelOf(5, view), pixelOf(7, view)]

    expect(tappedAt(scene, view, { x: below.x, y: (below.y + above.y) / 2 })).toEqual({
      kind: 'nothing',
    })
  })

  test('on a gap means the gap where empty places are shown', () => {
    const [below, above] = [pixelOf(5, view), pixelOf(7, view)]
    const gap = { x: below.x, y: (below.y + above.y) / 2 }

    expect(tappedAt(scene, view, gap, true)).toMatchObject({ tree: { no: 6, life: 'gap' } })
    expect(tappedAt(scene, view, above, true)).toMatchObject({ tree: { no: 7 } })
  })

  test('on the number of a row means the row', () => {
    const label = rowLabels(scene, view, sizesAt(scene, view)).find(({ row }) => row.row === 2)

    expect(label && tappedAt(scene, view, label)).toEqual({ kind: 'row', block: 1, row: 2 })
  })

  test('in a crowd means the nearest', () => {
    const small = viewOf(scene, 9)

    for (const tree of scene.trees)
      expect(tappedAt(scene, small, pixelOf(tree.no, small))).toMatchObject({
        tree: { no: tree.no },
      })
  })
})

describe('the number of a row', () => {
  test('hangs beyond its tagged end', () => {
    const view = viewOf(scene, 60)
    const [first] = rowLabels(scene, view, sizesAt(scene, view))

    // Low places are south, so the tag is below them on the screen.
    expect(first?.y).toBeGreaterThan(pixelOf(1, view).y)
  })

  test('hangs beyond the other end where only that one is on the screen', () => {
    const view = { ...viewOf(scene, 60), screen: { minX: 0, minY: -60, maxX: 1000, maxY: 130 } }

    for (const { y, row } of rowLabels(scene, view, sizesAt(scene, view)))
      for (const index of row.indexes)
        expect(y).toBeLessThan(toCanvas(view, 0, scene.ys[index] ?? 0).y - 25)
  })

  test('stays on the screen when the end of the row does not', () => {
    const view = { ...viewOf(scene, 200), screen: { minX: 0, minY: 300, maxX: 1000, maxY: 500 } }

    for (const { y } of rowLabels(scene, view, sizesAt(scene, view))) {
      expect(y).toBeGreaterThan(300)
      expect(y).toBeLessThan(500)
    }
  })

  test('on top of trees that stand close is shown at every other row, on a plate', () => {
    // Rows are as far apart as the trees in them; their ends are below the screen.
    const view = { ...viewOf(scene, 20), screen: { minX: 0, minY: 40, maxX: 1000, maxY: 100 } }
    const onTrees = rowLabels(scene, view, sizesAt(scene, view))
    const atEnds = rowLabels(scene, viewOf(scene, 20), sizesAt(scene, view))

    expect(onTrees.map(({ row, onTrees: isOn }) => [row.row, isOn])).toEqual([[2, true]])
    expect(atEnds.map(({ row, onTrees: isOn }) => [row.row, isOn])).toEqual([
      [1, false],
      [2, false],
      [3, false],
    ])
  })

  test('is left out where it would run into the next', () => {
    const view = viewOf(scene, 10)

    expect(rowLabels(scene, view, sizesAt(scene, view))).toEqual([])
  })
})

describe('the arrow keys', () => {
  const walk = (whole: Scene, from: number, ...arrows: Arrow[]) =>
    arrows.reduce<number | undefined>(
      (at, arrow) => treeTowards(whole, at ?? null, arrow)?.no,
      from
    )

  test('walk along the row and across to the next', () => {
    expect(walk(scene, 1, 'ArrowUp')).toBe(2)
    expect(walk(scene, 2, 'ArrowDown')).toBe(1)
    expect(walk(scene, 3, 'ArrowRight')).toBe(7)
    expect(walk(scene, 7, 'ArrowRight')).toBe(11)
    expect(walk(scene, 11, 'ArrowLeft')).toBe(7)
  })

  test('step over a gap', () => {
    expect(walk(scene, 5, 'ArrowUp')).toBe(7)
  })

  test('turn with the map', () => {
    const eastUp = sceneOf(trees, [block], 90)

    expect(walk(eastUp, 3, 'ArrowUp')).toBe(7)
    expect(walk(eastUp, 1, 'ArrowLeft')).toBe(2)
  })

  test('stay where there is nothing further, and go on to another block', () => {
    expect(walk(scene, 4, 'ArrowUp')).toBe(4)

    const north = aBlock({ no: 2, firstTree: step(someField, 0, 60) })
    const both = sceneOf([...trees, ...treesOf(['TT'], north, 20)], [block, north])
    expect(walk(both, 4, 'ArrowUp')).toBe(20)
    expect(walk(both, 20, 'ArrowDown')).toBe(4)
  })

  test('reach every tree from every other', () => {
    const reached = new Set([1])
    for (const no of reached)
      for (const arrow of ['ArrowUp', 'ArrowDown', 'ArrowLeft', 'ArrowRight'] as const)
        reached.add(walk(scene, no, arrow) ?? no)

    expect(reached.size).toBe(scene.trees.length)
  })
})

const paged = (looks: readonly (readonly [number, Look])[]) => PagedMap.empty<Look>().with(looks)

describe('a change of looks', () => {
  const plain = {
    status: 'unpruned' as const,
    badge: null,
    dealtToMe: false,
    dealtTo: [],
    heldByMe: false,
    closed: false,
    initials: [],
  }

  test('repaints the trees that look different and no others', () => {
    const looks = looksOf(scene)
    looks.take(paged([[1, plain]]))

    const dirty = looks.take(
      paged([
        [1, { ...plain }],
        [7, { ...plain, status: 'done' as const }],
      ])
    )

    expect(dirty).toEqual([scene.indexOf.get(7)])
    expect(looks.markAt(scene.indexOf.get(7) ?? 0)).toBe('done')
  })

  test('back to nothing known is a change, too', () => {
    const looks = looksOf(scene)
    looks.take(paged([[7, { ...plain, status: 'done' as const }]]))

    expect(looks.take(paged([]))).toEqual([scene.indexOf.get(7)])
    expect(looks.markAt(scene.indexOf.get(7) ?? 0)).toBe('unpruned')
  })

  test('looks at the trees that changed, and at no other', () => {
    const asked: number[] = []
    const indexOf = new Map(scene.indexOf)
    indexOf.get = (no) => asked.push(no) && scene.indexOf.get(no)
    const looks = looksOf({ ...scene, indexOf })
    const before = paged(scene.trees.map(({ no }) => [no, plain]))
    looks.take(before)
    asked.length = 0

    looks.take(before.with([[9, { ...plain, status: 'done' }]]))

    expect(asked).toEqual([9])
  })

  test('of people paints everything, since bubbles make room for each other', () => {
    const looks = looksOf(scene)

    expect(looks.take(paged([[1, { ...plain, initials: ['AB'] }]]))).toBeNull()
    expect([...looks.people().values()]).toEqual([['AB']])
    expect(looks.take(paged([]))).toBeNull()
    expect(looks.people().size).toBe(0)
  })

  test('to somebody who calls for help paints everything, for two rings around their bubble', () => {
    const looks = looksOf(scene)
    looks.take(paged([[1, { ...plain, initials: ['AB', 'CD'] }]]))

    expect(
      looks.take(paged([[1, { ...plain, initials: ['AB', 'CD'], calling: ['CD'] }]]))
    ).toBeNull()
    const view = viewOf(scene, 60)
    const bubbles = bubblesOf(scene, looks.people(), {
      view,
      sizes: sizesAt(scene, view),
      markAt: looks.markAt,
      calling: looks.calling(),
    })
    expect(bubbles.map(({ initials, isCalling }) => [initials, isCalling ?? false])).toEqual([
      ['AB', false],
      ['CD', true],
    ])
    looks.take(paged([]))
    expect(looks.calling().size).toBe(0)
  })

  test('shows a disease flag as a badge where another mark stands in front', () => {
    const looks = looksOf(scene)
    looks.take(
      paged([
        [1, { ...plain, status: 'in_progress' as const, badge: 'disease' as const }],
        [2, { ...plain, status: 'disease' as const, badge: 'disease' as const }],
      ])
    )

    expect(looks.hasDiseaseBadge(0)).toBe(true)
    expect(looks.hasDiseaseBadge(1)).toBe(false)
  })
})

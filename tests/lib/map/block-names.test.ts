import { expect, test } from 'vitest'

import { blockNames } from '@/lib/map/block-names'
import { sceneOf } from '@/lib/map/scene'
import { meet, type View } from '@/lib/map/view'

import { aBlock, treesOf } from '../domain/an-orchard'

// Letters of one width, so that everybody can count.
const measure = {
  name: (words: string) => 9 * words.length,
  plate: (words: string) => 7 * words.length,
}
const notSurveyed = 'not surveyed: a list, not a place'

function viewAt(scene: ReturnType<typeof sceneOf>, spacingPx: number): View {
  const scale = spacingPx / scene.spacing
  return {
    scale,
    originX: scene.box.minX * scale,
    originY: scene.box.minY * scale,
    sharpness: 1,
    screen: { minX: 0, minY: 0, maxX: 1000, maxY: 1000 },
  }
}

/** A block that is known, and beside it a small one that nobody surveyed. */
function besideIt(rows: readonly string[]) {
  const known = aBlock({ name: 'By the river' })
  const lost = aBlock({ no: 2, name: 'Old wood', firstTree: null })
  return sceneOf(
    [...treesOf(['TTTTTT', 'TTTTTT'], known), ...treesOf(rows, lost, 50)],
    [known, lost]
  )
}

test('that a block was not surveyed stands under its name where there is room', () => {
  const scene = besideIt(Array.from({ length: 20 }, () => 'TTTTTT'))
  const [known, lost] = blockNames(scene, viewAt(scene, 12), { notSurveyed, measure })

  expect(known?.plate).toBeNull()
  expect(lost?.plate?.lines).toEqual([notSurveyed])
  expect(lost?.plate?.y).toBeGreaterThan(lost?.y ?? 0)
})

test('it never covers the name of another block, however near and far one looks', () => {
  const crowded = ['T', 'T']
  for (const px of [2, 4, 8, 16, 32]) {
    const scene = besideIt(crowded)
    const [known, lost] = blockNames(scene, viewAt(scene, px), { notSurveyed, measure })
    const plate = lost?.plate
    if (!known || !plate) throw new Error('Both are written.')

    const boxOf = (x: number, y: number, width: number, height: number) => ({
      minX: x - width / 2,
      maxX: x + width / 2,
      minY: y - height / 2,
      maxY: y + height / 2,
    })
    const name = boxOf(known.x, known.y, measure.name('By the river'), 20)
    expect(meet(boxOf(plate.x, plate.y, plate.width, plate.height), name), `at ${px} px`).toBe(
      false
    )
  }
})

test('a block that is known keeps its name where it is', () => {
  const scene = besideIt(['T', 'T'])
  const alone = sceneOf(treesOf(['TTTTTT', 'TTTTTT']), [aBlock({ name: 'By the river' })])
  const [known] = blockNames(scene, viewAt(scene, 4), { notSurveyed, measure })
  const [same] = blockNames(alone, viewAt(alone, 4), { notSurveyed, measure })

  expect(known?.x).toBeCloseTo(same?.x ?? 0, 6)
})

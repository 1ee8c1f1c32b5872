import { expect, test } from 'vitest'

import { sceneOf } from '@/lib/map/scene'
import { treesWithin } from '@/lib/map/trees-within'

import { aBlock, treesOf } from '../domain/an-orchard'

const scene = sceneOf(treesOf(['TTTT', 'T.TT', 'TTTT']), [aBlock()])

/** A box round some trees, a metre wider than they are. */
function around(numbers: number[]) {
  const at = numbers.map((no) => scene.indexOf.get(no) ?? 0)
  const xs = at.map((index) => scene.xs[index] ?? 0)
  const ys = at.map((index) => scene.ys[index] ?? 0)
  const air = scene.plane.unitsPerM
  const [left, right] = [Math.min(...xs) - air, Math.max(...xs) + air]
  const [top, bottom] = [Math.min(...ys) - air, Math.max(...ys) + air]
  return [
    { x: left, y: top },
    { x: right, y: top },
    { x: right, y: bottom },
    { x: left, y: bottom },
  ]
}

test('all that stand inside are found, in the order of the scene', () => {
  const all = scene.trees.map(({ no }) => no)
  expect(treesWithin(scene, around(all))).toEqual(all)
})

test('one tree alone', () => {
  const [first = 0] = scene.trees.map(({ no }) => no)
  expect(treesWithin(scene, around([first]))).toEqual([first])
})

test('two corners or fewer hold no tree', () => {
  expect(treesWithin(scene, around([1]).slice(0, 2))).toEqual([])
  expect(treesWithin(scene, [])).toEqual([])
})

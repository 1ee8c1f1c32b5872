import { expect, test } from 'vitest'

import type { Look } from '@/lib/domain/orchard/status'
import { type HeapedPicture, heapsIn } from '@/lib/map/heaps'
import { looksOf } from '@/lib/map/looks'
import { marginsOf } from '@/lib/map/margins'
import { sceneOf } from '@/lib/map/scene'
import { sizesAt } from '@/lib/map/view'
import { PagedMap } from '@/lib/util/paged-map'

import { aBlock, treesOf } from '../domain/an-orchard'

const block = aBlock()
const trees = treesOf(Array.from({ length: 12 }, () => 'T'.repeat(40)))
const scene = sceneOf(trees, [block])

const look: Look = {
  status: 'done',
  badge: null,
  dealtToMe: false,
  heldByMe: false,
  dealtTo: [],
  closed: false,
  initials: [],
}

/** So near that trees are two pixels apart, with everything on the canvas. */
function pictureOf(looks: ReadonlyMap<number, Look>, parts: Partial<HeapedPicture> = {}) {
  const taken = looksOf(scene)
  taken.take(PagedMap.empty<Look>().with(looks))
  const scale = 2 / scene.spacing
  const view = {
    scale,
    originX: scene.box.minX * scale - 20,
    originY: scene.box.minY * scale - 20,
    sharpness: 1,
    screen: whole,
  }
  return {
    scene,
    looks: taken,
    view,
    selected: new Set<number>(),
    dimmed: new Set<number>(),
    ...parts,
  }
}

const whole = { minX: 0, minY: 0, maxX: 300, maxY: 300 }

const allDone = new Map(trees.map((tree) => [tree.no, look]))

test('trees are heaped only where they cannot be told apart', () => {
  const { view } = pictureOf(allDone)

  expect(sizesAt(scene, view).isHeaped).toBe(true)
  expect(sizesAt(scene, { ...view, scale: view.scale * 4 }).isHeaped).toBe(false)
})

test('a square is done only when all of it is done', () => {
  const heaps = heapsIn(pictureOf(allDone), whole)
  const butOne = heapsIn(
    pictureOf(new Map(allDone).set(100, { ...look, status: 'unpruned' })),
    whole
  )

  expect(heaps.length).toBeGreaterThan(10)
  expect(heaps.length).toBeLessThan(trees.length / 4)
  expect(heaps.every(({ mark }) => mark === 'done')).toBe(true)
  expect(butOne.filter(({ mark }) => mark === 'unpruned')).toHaveLength(1)
})

test('one hazard among hundreds of trees is seen, and so is a disease beside it', () => {
  const looks = new Map(allDone)
    .set(7, { ...look, status: 'arborist' })
    .set(470, { ...look, badge: 'disease' })

  const marks = heapsIn(pictureOf(looks), whole).map(({ mark }) => mark)

  expect(marks.filter((mark) => mark === 'arborist')).toHaveLength(1)
  expect(marks.filter((mark) => mark === 'disease')).toHaveLength(1)
})

test('what is filtered out says nothing beside what is not, and is faint where it is alone', () => {
  const hazard = new Map(allDone).set(7, { ...look, status: 'arborist' })
  const one = heapsIn(pictureOf(hazard, { dimmed: new Set([7]) }), whole)
  const all = heapsIn(pictureOf(hazard, { dimmed: new Set(trees.map(({ no }) => no)) }), whole)

  expect(one.every(({ mark, isFaint }) => mark === 'done' && !isFaint)).toBe(true)
  expect(all.every(({ isFaint }) => isFaint)).toBe(true)
})

test('a square is chosen when all of its trees are', () => {
  const chosen = new Set(trees.filter(({ row }) => row <= 6).map(({ no }) => no))

  const heaps = heapsIn(pictureOf(allDone, { selected: chosen }), whole)

  expect(heaps.some(({ isSelected }) => isSelected)).toBe(true)
  expect(heaps.some(({ isSelected }) => !isSelected)).toBe(true)
})

test('a part that is painted alone shows what the whole shows there', () => {
  const looks = new Map(allDone).set(7, { ...look, status: 'arborist' })
  const part = { minX: 31, minY: 17, maxX: 64, maxY: 50 }
  const inWhole = heapsIn(pictureOf(looks), whole)

  const found = heapsIn(pictureOf(looks), part)

  expect(found.length).toBeGreaterThan(0)
  for (const heap of found) expect(inWhole).toContainEqual(heap)
})

test('the margins and the screen make the whole box, once each', () => {
  const screen = { minX: 40, minY: 30, maxX: 240, maxY: 250 }

  const parts = [screen, ...marginsOf(whole, screen)]

  const areas = parts.map(({ minX, minY, maxX, maxY }) => (maxX - minX) * (maxY - minY))
  expect(areas.reduce((sum, area) => sum + area, 0)).toBe(300 * 300)
  expect(areas.every((area) => area > 0)).toBe(true)
})

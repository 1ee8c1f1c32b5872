import { describe, expect, test } from 'vitest'

import { emptyPoint, fitOf, readPoint, type Three } from '@/components/aerial/aerial-typed'
import { placesOf } from '@/lib/domain/orchard/around'
import { step } from '@/lib/domain/orchard/distance'

import { aBlock, someField, treesOf } from '../../lib/domain/an-orchard'

const blocks = [aBlock(), aBlock({ no: 2, code: 'C', name: 'Creek', firstTree: null })]
const trees = [...treesOf(['TTT', 'TTT']), ...treesOf(['T'], blocks[1], 50)]
const ground = { trees, blocks, places: placesOf(trees, blocks) }

describe('one of the three trees', () => {
  test('is where its tag says, and where in the picture it was tapped', () => {
    const read = readPoint({ left: '12,5', top: '80 %', tag: 's 2/1' }, ground)

    expect(read).toEqual({
      state: 'whole',
      point: { x: 0.125, y: 0.8, position: ground.places.get(4)?.position },
    })
  })

  test.each([
    [{ left: '101' }, 'left', 'share'],
    [{ top: 'half' }, 'top', 'share'],
    [{ top: '-1' }, 'top', 'share'],
    [{ tag: 'S 9·9' }, 'tag', 'no_tree'],
    [{ tag: 'C 1·1' }, 'tag', 'no_place'],
  ])('%o is wrong in %s: %s', (part, field, why) => {
    const typed = { left: '10', top: '10', tag: 'S 1·1', ...part }

    expect(readPoint(typed, ground)).toEqual({ state: 'wrong', field, why })
  })

  test('is not wrong while it is not said yet', () => {
    expect(readPoint(emptyPoint, ground)).toEqual({ state: 'lacking' })
    expect(readPoint({ ...emptyPoint, tag: 'S 1·1' }, ground)).toEqual({ state: 'lacking' })
  })
})

describe('three trees together', () => {
  const size = { width: 2000, height: 1000 }
  const at = (x: number, y: number, eastM: number, northM: number) => ({
    x,
    y,
    position: step(step(someField, 90, eastM), 0, northM),
  })
  // A picture of 200 by 100 metres, its top to the north.
  const corner = at(0, 0, 0, 0)
  const right = at(1, 0, 200, 0)
  const below = at(0, 1, 0, -100)

  test('fit when the picture is only turned and enlarged', () => {
    expect(fitOf([corner, right, below], size)).toEqual({ state: 'fits' })
  })

  test.each<[string, Three, string]>([
    ['on one line', [corner, right, at(0.5, 0.01, 100, -1)], 'one_line'],
    ['two of them exchanged', [corner, at(1, 0, 0, -200), at(0, 1, 100, 0)], 'mirrored'],
    ['one at another tree', [corner, right, at(0, 1, 0, -180)], 'stretched'],
  ])('%s do not', (_, three, state) => {
    expect(fitOf(three, size).state).toBe(state)
  })
})

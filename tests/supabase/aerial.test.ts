/** The picture from above: one for an orchard, read apart. */

import { afterAll, beforeAll, describe, expect, test } from 'vitest'

import type { State } from '@/lib/events/state'
import { engines, type TestDatabase } from '../support/engines'
import { crewOfThree, faultOf, lastEvent } from '../support/orchard'
import { plainJpeg } from './scene'

const points = [
  [0, 0, 410_000_000, -28_000_000],
  [10_000, 0, 410_000_000, -27_988_000],
  [0, 10_000, 409_991_000, -28_000_000],
] as [number, number, number, number][]

describe.each(engines)('the picture from above on $name', ({ open }) => {
  let database: TestDatabase
  beforeAll(async () => {
    database = await open()
  }, 60_000)
  afterAll(() => database.close())

  test('is placed, placed anew, and taken away; events say only that it is another', async () => {
    const { orchard, lead } = await crewOfThree(database)
    const manager = orchard.manager
    expect(await lead.read('read_aerial')).toBeNull()
    expect(await manager.send('place_aerial', { points, opacity: 70 })).toMatchObject({
      body: { refused: [{ code: 'no_picture' }] },
    })

    await manager.must('place_aerial', { points, opacity: 70, jpeg: plainJpeg })
    await manager.must('place_aerial', { points: points.toReversed(), opacity: 40 })

    expect((await lastEvent(orchard)).body).toEqual({ aerialVersion: 2 })
    expect(await lead.read('read_aerial')).toEqual({
      jpeg: plainJpeg,
      points: points.toReversed(),
      opacity: 40,
    })
    const state = (await lead.read('snapshot', { person: lead.id })) as State
    expect(state.orchard.aerialVersion).toBe(2)
    await manager.must('remove_aerial', {})
    expect(await lead.read('read_aerial')).toBeNull()
    expect((await lastEvent(orchard)).body).toEqual({ aerialVersion: 3 })
  })

  test('is a plain JPEG of 600 kB at most', async () => {
    const { orchard } = await crewOfThree(database)
    const place = (jpeg: Buffer) =>
      orchard.manager.send('place_aerial', { points, opacity: 70, jpeg: jpeg.toString('base64') })
    const plain = Buffer.from(plainJpeg, 'base64')

    expect(await place(Buffer.from('GIF89a-something'))).toMatchObject({
      body: { refused: [{ code: 'photo_not_plain' }] },
    })
    expect(await place(Buffer.concat([plain, Buffer.alloc(600_000, 7)]))).toMatchObject({
      body: { refused: [{ code: 'photo_too_large' }] },
    })
  })

  test.each([
    ['two points', points.slice(0, 2)],
    ['points on one line', [points[0], [5000, 50, 410_000_000, -27_994_000], points[1]]],
    ['one place three times', points.map(([x, y]) => [x, y, 410_000_000, -28_000_000])],
    ['a point beside the picture', [points[0], points[1], [0, 10_001, 409_991_000, -28_000_000]]],
    ['words', [points[0], points[1], ['a', 'b', 'c', 'd']]],
    ['numbers past all bounds', [points[0], points[1], [0, 1e30, 1e30, 1e300]]],
    ['none', null],
  ])('%s do not place it', async (_, wrong) => {
    const { orchard } = await crewOfThree(database)
    const args = { points: wrong as typeof points, opacity: 70, jpeg: plainJpeg }

    expect(faultOf(await orchard.manager.send('place_aerial', args))).toBe('400 malformed')
  })
})

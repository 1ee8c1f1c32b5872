import fc from 'fast-check'
import { describe, expect, test } from 'vitest'

import { positionText, readPosition } from '@/lib/domain/orchard/read-position'

const read = (lat: number, lon: number) => ({
  state: 'read',
  position: { lat: expect.closeTo(lat, 6), lon: expect.closeTo(lon, 6) },
})

describe('a position as it is typed', () => {
  test.each([
    ['41.20418, -2.81774', 41.20418, -2.81774],
    ['41.20418,-2.81774', 41.20418, -2.81774],
    ['41.20418 -2.81774', 41.20418, -2.81774],
    ['  41.20418 ; −2.81774 ', 41.20418, -2.81774],
    ['41,20418, -2,81774', 41.20418, -2.81774],
    ['41,20418; -2,81774', 41.20418, -2.81774],
    ['41,20418 -2,81774', 41.20418, -2.81774],
    ['41, -2', 41, -2],
    ['41.5° -2.25°', 41.5, -2.25],
    ['41°12′15.05″N 2°49′3.86″W', 41 + 12 / 60 + 15.05 / 3600, -(2 + 49 / 60 + 3.86 / 3600)],
    [`41° 12' 15.05" N, 2° 49' 3.86" O`, 41 + 12 / 60 + 15.05 / 3600, -(2 + 49 / 60 + 3.86 / 3600)],
    [`S 33° 51.5' E 151° 12.5'`, -33.858333, 151.208333],
    ['2.81774 W, 41.20418 N', 41.20418, -2.81774],
  ])('%s', (typed, lat, lon) => {
    expect(readPosition(typed)).toEqual(read(lat, lon))
  })
})

test('what is not one is told apart', () => {
  expect(readPosition(' ')).toEqual({ state: 'empty' })
  for (const typed of ['41.2', '41,20418', 'north gate', '41.2, -2.8, 700', '41.2N 2.8N', '1e9, 2'])
    expect(readPosition(typed), typed).toEqual({ state: 'unreadable' })
  expect(readPosition('191, -200')).toEqual({ state: 'out_of_range' })
})

test('the longitude first is noticed where it can be', () => {
  expect(readPosition('-121.9, 37.4')).toEqual({
    state: 'swapped',
    position: { lat: 37.4, lon: -121.9 },
  })
})

test('what is shown is read back the same', () => {
  const e7 = (most: number) => fc.integer({ min: -most * 1e7, max: most * 1e7 })
  fc.assert(
    fc.property(e7(90), e7(180), (latE7, lonE7) => {
      const position = { lat: latE7 / 1e7, lon: lonE7 / 1e7 }

      expect(readPosition(positionText(position))).toEqual({ state: 'read', position })
    })
  )
})

test('no text makes it throw', () => {
  fc.assert(fc.property(fc.string(), (typed) => typeof readPosition(typed).state === 'string'))
})

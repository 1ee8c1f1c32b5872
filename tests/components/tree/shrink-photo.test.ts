import { describe, expect, test } from 'vitest'

import { type Darkroom, mostBytes, shrinkIn, sizeWithin } from '@/components/tree/shrink-photo'

type Taken = { width: number; height: number }

/** A darkroom whose JPEGs weigh so many bytes a pixel at full quality. */
function darkroom(
  picture: Taken | null,
  bytesAPixel: number
): Darkroom<Taken> & { tries: number[] } {
  const tries: number[] = []
  return {
    tries,
    decode: async () => picture,
    encode: async (_, { width, height }, quality) => {
      const bytes = Math.round(width * height * bytesAPixel * quality)
      tries.push(bytes)
      return new Blob([new Uint8Array(bytes)])
    },
  }
}

const photo = new Blob([new Uint8Array(1000)])

describe('a photo is made small', () => {
  test('the first attempt that fits is taken', async () => {
    const room = darkroom({ width: 4000, height: 3000 }, 0.1)
    const shrunk = await shrinkIn(room, photo)

    expect(shrunk.state).toBe('shrunk')
    expect(room.tries.length).toBeGreaterThan(0)
    expect(room.tries.at(-1)).toBeLessThanOrEqual(mostBytes)
    expect(room.tries.slice(0, -1).every((bytes) => bytes > mostBytes)).toBe(true)
  })

  test('what is sent is the base64 of what was drawn', async () => {
    const shrunk = await shrinkIn(
      { decode: async () => ({ width: 2, height: 2 }), encode: async () => new Blob(['abc']) },
      photo
    )

    expect(shrunk).toEqual({ state: 'shrunk', jpeg: btoa('abc') })
  })

  test.each([
    ['a file that cannot be read', darkroom(null, 1), photo],
    ['an empty file', darkroom({ width: 2, height: 2 }, 1), new Blob([])],
    ['a picture without any extent', darkroom({ width: 0, height: 9 }, 1), photo],
  ])('%s is not a photo', async (_, room, file) => {
    expect(await shrinkIn(room, file)).toEqual({ state: 'not_a_photo' })
  })

  test('a picture that stays heavy is too large, after the smallest was tried', async () => {
    const room = darkroom({ width: 9000, height: 9000 }, 2)

    expect(await shrinkIn(room, photo)).toEqual({ state: 'too_large' })
    expect(Math.min(...room.tries)).toBeGreaterThan(mostBytes)
  })

  test('a file that could end the page is not even decoded', async () => {
    const huge = { size: 200_000_000 } as Blob
    const room: Darkroom<Taken> = {
      decode: () => Promise.reject(new Error('decoded')),
      encode: async () => null,
    }

    expect(await shrinkIn(room, huge)).toEqual({ state: 'too_large' })
  })
})

test.each([
  [{ width: 4000, height: 3000 }, 1600, { width: 1600, height: 1200 }],
  [{ width: 3000, height: 4000 }, 1600, { width: 1200, height: 1600 }],
  [{ width: 800, height: 600 }, 1600, { width: 800, height: 600 }],
  [{ width: 9000, height: 1 }, 640, { width: 640, height: 1 }],
])('%j within %i is %j', (size, longest, expected) => {
  expect(sizeWithin(size, longest)).toEqual(expected)
})

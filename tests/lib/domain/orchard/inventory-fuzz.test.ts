/** Ten thousand broken files: never a crash, never half an import, and always a sentence that says what to do. */

import fc from 'fast-check'
import { expect, test } from 'vitest'

import { parseInventory } from '@/lib/domain/orchard/inventory'
import { inventory as english } from '@/lib/text/en/inventory'
import { inventory as spanish } from '@/lib/text/es/inventory'

const whole = [
  'block;row;place;species;cultivar;planted_year;trunk_cm;height_m;hazard;lat;lon',
  'Long Bank;1;1;plum;Stanley;1998;18,5;3,2;;41,0512;-2,9034',
  'Long Bank;1;2;apple;;2001;22;2,8;power line;41,05123;-2,9034',
  'Long Bank;2;1;"pear; old";;;;;;;',
  'W;1;1;fig;;;;;;;',
].join('\n')
const geoJson = JSON.stringify({
  type: 'FeatureCollection',
  features: [1, 2, 3].map((place) => ({
    type: 'Feature',
    geometry: { type: 'Point', coordinates: [-2.9, 41 + place / 1e5] },
    properties: { block: 'W', row: 1, place, species: 'plum' },
  })),
})

/** What breaks files: something put in, left out, doubled or cut off, anywhere, in characters or in bytes. */
const harm = fc.record({
  at: fc.double({ min: 0, max: 1, noNaN: true }),
  length: fc.nat(40),
  put: fc.oneof(
    fc.constantFrom(
      '"',
      '""',
      ';',
      ',',
      '\n',
      '\r',
      '\t',
      '\u0000',
      '=1+1',
      '-',
      '1e9',
      'NaN',
      '🌳',
      '{',
      '}',
      '[',
      'null',
      '9'.repeat(30)
    ),
    fc.string({ unit: 'binary', maxLength: 6 })
  ),
})
const file = fc
  .record({
    text: fc.constantFrom(whole, geoJson),
    harms: fc.array(harm, { minLength: 1, maxLength: 4 }),
    bytes: fc.array(fc.tuple(fc.double({ min: 0, max: 1, noNaN: true }), fc.nat(255)), {
      maxLength: 2,
    }),
  })
  .map(({ text, harms, bytes }) => {
    const broken = harms.reduce((before, { at, length, put }) => {
      const from = Math.floor(at * before.length)
      return before.slice(0, from) + put + before.slice(from + length)
    }, text)
    const file = new TextEncoder().encode(broken)
    for (const [at, byte] of bytes) file[Math.floor(at * (file.length - 1))] = byte
    return file
  })

test('whatever is broken in a file, it is read whole or not at all, and each problem has a sentence', () => {
  let refused = 0
  fc.assert(
    fc.property(file, (bytes) => {
      const read = parseInventory({ file: bytes, thisYear: 2026 })

      if (read.state === 'read') {
        const places = read.trees.map(({ block, row, place }) => `${block}|${row}|${place}`)
        expect(new Set(places).size).toBe(places.length)
        expect(read.lines.length).toBe(read.trees.length)
        for (const { block } of read.trees) expect(read.blocks[block - 1]?.no).toBe(block)
        return
      }
      refused += 1
      expect(read).not.toHaveProperty('trees')
      expect(read.problems.length).toBeGreaterThan(0)
      for (const { code, column, found, allowed } of read.problems) {
        const said = { column: column ?? '', found, allowed }
        for (const { problems } of [english, spanish]) {
          expect(problems[code](said)).toMatch(/^.{10,}[.»”]?$/su)
        }
      }
    }),
    { numRuns: 10_000 }
  )
  // Most of the harm is seen; what is left is a file that still says something.
  expect(refused).toBeGreaterThan(5_000)
})

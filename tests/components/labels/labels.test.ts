import { describe, expect, test } from 'vitest'

import { labelSizes, paddingMm } from '@/components/labels/label-sizes'
import { readLabels } from '@/components/labels/label-typed'
import { sheetNames, sheetOf } from '@/lib/domain/orchard/label-sheets'

const rows = { from: 2, to: 9 }
const written = { fromRow: '2', toRow: '9', first: '1' }

describe('what is written', () => {
  test('is read when rows and first label are there', () => {
    expect(readLabels({ ...written, fromRow: ' 3 ', first: '8' }, rows, 8)).toEqual({
      state: 'whole',
      fromRow: 3,
      toRow: 9,
      first: 8,
    })
  })

  test.each([
    [{ fromRow: '' }, 'rows'],
    [{ fromRow: '1' }, 'rows'],
    [{ toRow: '10' }, 'rows'],
    [{ fromRow: '5', toRow: '4' }, 'rows'],
    [{ toRow: 'all' }, 'rows'],
    [{ first: '0' }, 'first'],
    [{ first: '9' }, 'first'],
    [{ first: '-1' }, 'first'],
  ] as const)('%o is wrong in %s', (part, field) => {
    expect(readLabels({ ...written, ...part }, rows, 8)).toEqual({ state: 'wrong', field })
  })
})

describe.each(sheetNames)('on a label of %s', (name) => {
  const sheet = sheetOf(name)

  // ISO/IEC 18004: a version 3 symbol has 29 modules a side, and 4 quiet ones on each side of it. Phones read
  // modules of 0.33 mm at arm's length (common practice, no source); dirt and glare ask for more.
  test('the code keeps modules that a phone reads', () => {
    expect(labelSizes(sheet, 'S 7·14').codeMm / (29 + 8)).toBeGreaterThan(0.5)
  })

  test.each(['S 7·14', 'NW 12·108'])('%s fits beside its code', (tag) => {
    const { codeMm, tagMm } = labelSizes(sheet, tag)

    expect(codeMm + 3 * paddingMm + tag.length * 0.62 * tagMm).toBeLessThanOrEqual(
      sheet.widthMm + 1e-9
    )
    expect(tagMm).toBeGreaterThan(4)
  })
})

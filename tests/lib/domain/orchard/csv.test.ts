import fc from 'fast-check'
import Papa from 'papaparse'
import { describe, expect, test } from 'vitest'

import {
  csvField,
  csvPlain,
  parseCsv,
  type Separator,
  separatorOf,
  separators,
  withoutApostrophes,
} from '@/lib/domain/orchard/csv'

/** Some of everything that means something in separated text. */
const field = fc
  .string({ unit: fc.constantFrom(...'ab,;\t"\n\'= é1'), maxLength: 8 })
  .map((text) => text.trim())
const table = fc.array(fc.array(field, { minLength: 2, maxLength: 4 }), { minLength: 1 })

function fieldsOf(text: string, separator: Separator): string[][] | null {
  const csv = parseCsv(text, { separator })
  return 'records' in csv ? csv.records.map(({ fields }) => fields) : null
}

describe('separated text', () => {
  test('comes back as it went in, whatever parts it', () => {
    fc.assert(
      fc.property(table, fc.constantFrom(...separators), (records, separator) => {
        const text = records.map((fields) => fields.map(csvField).join(separator)).join('\n')

        expect(fieldsOf(text, separator)).toEqual(records)
      })
    )
  })

  test('is read as papaparse, a library for nothing else, reads what it writes', () => {
    const lineEnd = fc.constantFrom('\n', '\r\n')
    fc.assert(
      fc.property(table, fc.constantFrom(...separators), lineEnd, (records, separator, newline) => {
        const text = Papa.unparse(records, { delimiter: separator, newline })

        const theirs = Papa.parse<string[]>(text, { delimiter: separator }).data
        expect(fieldsOf(text, separator)).toEqual(theirs)
      })
    )
  })

  test.each([
    // The examples of RFC 4180, section 2.
    [
      'aaa,bbb,ccc\r\nzzz,yyy,xxx\r\n',
      [
        ['aaa', 'bbb', 'ccc'],
        ['zzz', 'yyy', 'xxx'],
      ],
    ],
    [
      '"aaa","b\r\nbb","ccc"\r\nzzz,yyy,xxx',
      [
        ['aaa', 'b\r\nbb', 'ccc'],
        ['zzz', 'yyy', 'xxx'],
      ],
    ],
    ['"aaa","b""bb","ccc"', [['aaa', 'b"bb', 'ccc']]],
  ])('%j', (text, records) => {
    expect(fieldsOf(text, ',')).toEqual(records)
  })

  test('names the line that an editor shows, after fields of several lines', () => {
    const csv = parseCsv('a,b\n"1\n2",3\n\n4,5')

    expect('records' in csv && csv.records.map(({ line }) => line)).toEqual([1, 2, 5])
  })

  test.each<[string, Separator]>([
    ['bloque;fila;árbol\n1;2;"3,5"', ';'],
    ['block,row,place', ','],
    ['block\trow\tplace', '\t'],
    ['"a,b,c";"d,e"\n', ';'],
    ['diámetro, cm;altura, m\n', ';'],
    ['one column', ','],
    ['', ','],
  ])('%j is parted by %j', (text, separator) => {
    expect(separatorOf(text)).toBe(separator)
  })
})

test('what a spreadsheet would run as a formula is escaped, and comes back', () => {
  const word = fc.string({ unit: fc.constantFrom(...'\'=+-@ab;"\t\r\n'), maxLength: 5 })
  fc.assert(
    fc.property(word, (text) => {
      const line = csvPlain(text)
      const written = fieldsOf(line, ',')?.[0]?.[0] ?? ''

      expect(/^[=+\-@]/.test(written)).toBe(false)
      // Where semicolons or tabs part fields, the quote before the text opens none.
      expect(/[;\t\r\n]"*[=+\-@]/.test(`first,${line}`)).toBe(false)
      expect(withoutApostrophes(written)).toBe(text)
    })
  )
})

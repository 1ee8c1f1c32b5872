import { expect, test } from 'vitest'

import { limbWords, reasonLines } from '@/components/tree/reason-words'
import { ours as en } from '@/lib/text/en/ours'
import { ours as es } from '@/lib/text/es/ours'
import { formatFor } from '@/lib/text/format'

const timeZone = 'UTC'
const metric = formatFor({ language: 'en', units: 'metric', timeZone })
const us = formatFor({ language: 'en', units: 'us', timeZone })
const thick = { code: 'limb_thick', seen: true, value: 14.02, limit: 10 }

test('what was measured is rounded up and what is allowed down, in either unit', () => {
  expect(reasonLines(en, metric, [thick])).toEqual(['Limb too thick: 14.1 cm, limit 10 cm'])
  expect(reasonLines(en, us, [thick])).toEqual([
    'Limb too thick: 5\u00a05/8 in, limit 3\u00a07/8 in',
  ])
})

test('of a distance it is the other way: less was measured, more is asked', () => {
  const near = { code: 'line_near', seen: true, value: 4.09, limit: 4.8768 }

  expect(reasonLines(en, metric, [near])).toEqual(['Power line near: 4 m, limit 4.9 m'])
  expect(reasonLines(en, us, [near])).toEqual(['Power line near: 13 ft 5 in, limit 16 ft'])
})

test('what nobody could tell is one line, in either language', () => {
  const unknown = ['limb_thick', 'too_high'].map((code) => ({
    code,
    seen: false,
    value: null,
    limit: 10,
  }))

  expect(reasonLines(en, metric, unknown)).toEqual([
    'Nobody could tell: how thick the limb is and how high it is.',
  ])
  expect(reasonLines(es, metric, unknown)[0]).toContain('el grosor de la rama')
})

test('a reason of a newer app is shown as it is', () => {
  expect(
    reasonLines(en, metric, [{ code: 'struck_by_lightning', seen: true, value: 3, limit: null }])
  ).toEqual(['struck by lightning'])
})

test('a limb is told as far as somebody said it', () => {
  expect(limbWords(en, metric, { cm: 14, bearingDeg: 315 })).toBe(
    '14 cm across, on the north-west side'
  )
  expect(limbWords(en, metric, { cm: null, bearingDeg: 360 })).toBe('on the north side')
  expect(limbWords(en, metric, null)).toBeNull()
})

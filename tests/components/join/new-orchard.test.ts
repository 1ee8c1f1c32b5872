import { expect, test } from 'vitest'

import { faultsOf, type NewOrchard, timeZones, unitsIn } from '../../../components/join/new-orchard'
import { codeIn } from '../../../components/join/use-code'

const orchard: NewOrchard = {
  name: 'Low Combe',
  personName: 'Olive Prior',
  timeZone: 'Europe/Madrid',
  language: 'en',
  units: 'metric',
}

test.each([
  { change: {}, faults: [] },
  { change: { name: '   ' }, faults: ['name'] },
  { change: { personName: '' }, faults: ['personName'] },
  { change: { name: 'x'.repeat(81), personName: 'x'.repeat(61) }, faults: ['name', 'personName'] },
  { change: { name: 'x'.repeat(80), personName: 'x'.repeat(60) }, faults: [] },
])('$change has $faults.length faults', ({ change, faults }) => {
  expect(faultsOf({ ...orchard, ...change })).toEqual(faults)
})

test('the zone of the device is always among the zones', () => {
  expect(timeZones('Nowhere/Else').map(({ value }) => value)).toContain('Nowhere/Else')
})

test('only the United States are proposed feet', () => {
  expect(['en-US', 'es-US', 'en-GB', 'es', 'en'].map(unitsIn)).toEqual([
    'us',
    'us',
    'metric',
    'metric',
    'metric',
  ])
})

test.each([
  ['abc_DEF-123', 'abc_DEF-123'],
  ['https://orchard.example/join#abc_DEF-123', 'abc_DEF-123'],
  [' #abc ', 'abc'],
  ['', ''],
])('the code in "%s" is "%s"', (text, code) => {
  expect(codeIn(text)).toBe(code)
})

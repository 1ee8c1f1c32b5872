import { expect, test } from 'vitest'

import {
  type Check,
  nextDoing,
  nothingChecked,
  withFault,
  withFound,
  withPicked,
} from '../../../components/ready/tool-check'

const picked = (...tools: number[]): Check =>
  tools.reduce((check, no) => withPicked(check, no, true), nothingChecked)

test('nothing is open when all is checked and nothing is picked', () => {
  expect(nextDoing(nothingChecked, [])).toEqual({ state: 'go_on' })
})

test('everything that is asked for is looked at before anything is sent', () => {
  const half = { ...nothingChecked, equipment: { gloves: 'in_order' } } as const
  expect(nextDoing(half, ['gloves', 'shoes'])).toEqual({ state: 'look_first' })
  expect(nextDoing(withFound(picked(3, 4), 3, 'in_order'), [])).toEqual({ state: 'look_first' })
})

test('a fault without a word about it is not sent', () => {
  const faulty = withFound(picked(3), 3, 'fault')
  expect(nextDoing(faulty, [])).toEqual({ state: 'say_fault' })
  expect(nextDoing(withFault(faulty, 3, 'blade_tight', true), [])).toMatchObject({ fails: [3] })
})

test('what is in order is taken, what is not is put out of use, in one go', () => {
  const tools = withFault(
    withFound(withFound(picked(3, 4), 3, 'in_order'), 4, 'fault'),
    4,
    'blade_sharp',
    true
  )
  const check: Check = { ...tools, equipment: { gloves: 'fault', shoes: 'in_order' } }

  expect(nextDoing(check, ['gloves', 'shoes'])).toEqual({
    state: 'send',
    failedEquipment: ['gloves'],
    takes: [3],
    fails: [4],
  })
})

test('protection that was checked before is not sent again', () => {
  const check = withFound(picked(3), 3, 'in_order')
  expect(nextDoing(check, [])).toMatchObject({ failedEquipment: null })
})

test('a tool laid back on the bench is not looked at any more', () => {
  expect(withPicked(picked(3, 4), 3, false)).toEqual(picked(4))
})

test('a fault is taken back by a second tap', () => {
  const faulty = withFault(picked(3), 3, 'blade_sharp', true)
  expect(withFault(faulty, 3, 'blade_sharp', false)).toEqual(picked(3))
})

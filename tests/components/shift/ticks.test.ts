import { expect, test } from 'vitest'

import { noTicks, ticked, tickedAs } from '@/components/shift/ticks'

test('who had come is ticked; who comes while the lead speaks is not', () => {
  expect(ticked(noTicks, ['ann', 'bo', 'late'], ['ann', 'bo'])).toEqual(['ann', 'bo'])
})

test('a lead unticks one who was not there and ticks the late one', () => {
  const said = tickedAs(tickedAs(noTicks, ['bo'], false), ['late'], true)

  expect(ticked(said, ['ann', 'bo', 'late'], ['ann', 'bo'])).toEqual(['ann', 'late'])
})

test('who is not waiting any more is not given to again', () => {
  expect(ticked(tickedAs(noTicks, ['ann'], true), ['bo'], ['ann', 'bo'])).toEqual(['bo'])
})

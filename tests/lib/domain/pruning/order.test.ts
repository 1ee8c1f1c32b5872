import { describe, expect, test } from 'vitest'

import { species } from '@/lib/domain/orchard/types'
import { formOf, type LastYearsWood, type TreeInHand, workSteps } from '@/lib/domain/pruning/order'

const apricot: TreeInHand = { species: 'apricot', habit: 'both', plantedYear: 2015, thisYear: 2026 }

function codesFor(tree: Partial<TreeInHand>) {
  return workSteps({ ...apricot, ...tree }).map(({ code }) => code)
}

// The order is common practice, no source.
describe('the order of work', () => {
  test('in an open-centre tree opens the centre after the sick and the crossing wood', () => {
    expect(codesFor({})).toEqual([
      'dead_broken_diseased',
      'crossing_rubbing',
      'open_the_centre',
      'ground_up_inside_out',
      'last_years_wood',
    ])
  })

  test('keeps the leader where there is one, and opens nothing where the form is unknown', () => {
    expect(codesFor({ species: 'pear' })).toContain('free_the_leader')
    expect(codesFor({ species: 'other' })).toContain('let_light_in')
  })

  test('begins with dead wood and ends with last year’s, in every species', () => {
    for (const each of species) {
      expect(codesFor({ species: each }).at(0)).toBe('dead_broken_diseased')
      expect(codesFor({ species: each }).at(-1)).toBe('last_years_wood')
    }
  })
})

// UC Master Gardener column, San Joaquin.
test.each(['almond', 'apricot', 'fig', 'peach', 'cherry', 'plum'] as const)(
  '%s is grown with an open centre',
  (each) => expect(formOf(each)).toBe('open_centre')
)
test.each(['apple', 'pear', 'persimmon', 'quince'] as const)(
  '%s is often grown with a leader',
  (each) => expect(formOf(each)).toBe('leader')
)

// Common practice, no source.
describe('last year’s wood', () => {
  test.each<[Partial<TreeInHand>, LastYearsWood]>([
    [{ habit: 'spur' }, 'outer_third'],
    [{ habit: 'both' }, 'outer_third'],
    [{ habit: 'shoot' }, 'do_not_shorten'],
    [{ habit: 'unknown' }, 'leave_and_ask'],
    [{ habit: 'spur', plantedYear: 2022 }, 'leads'],
    [{ habit: 'spur', plantedYear: 2021 }, 'outer_third'],
    [{ habit: 'spur', plantedYear: null }, 'outer_third'],
  ])('%o: %s', (tree, what) => {
    expect(workSteps({ ...apricot, ...tree }).at(-1)).toEqual({ code: 'last_years_wood', what })
  })
})

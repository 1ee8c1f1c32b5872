import { describe, expect, test } from 'vitest'

import { isSameName } from '../../../components/rooms/is-same-name'
import { hoursByPerson, workedIn } from '../../../components/rooms/season-hours'

const shift = (people: [person: string, hereS: number, breakS: number, done: number][]) => ({
  shift: 's',
  round: 'r',
  kind: 'winter' as const,
  date: '2026-11-24',
  state: 'closed' as const,
  people: people.map(([person, hereS, breakS, done]) => ({
    person,
    hereS,
    breakS,
    done,
    begun: 0,
    helped: 0,
  })),
})

test('hours of a season add up the same by person and by shift', () => {
  const shifts = [
    shift([
      ['ann', 7200, 600, 3],
      ['bo', 3600, 0, 1],
    ]),
    shift([
      ['bo', 9000, 900, 2],
      ['cy', 0, 0, 1],
    ]),
  ]

  const people = hoursByPerson({ shifts })

  expect(people).toEqual([
    { person: 'bo', shifts: 2, workedS: 11_700, breakS: 900, done: 3 },
    { person: 'ann', shifts: 1, workedS: 6600, breakS: 600, done: 3 },
    // Only from paper: no hours, and no shift to be counted in.
    { person: 'cy', shifts: 0, workedS: 0, breakS: 0, done: 1 },
  ])
  expect(people.reduce((all, { workedS }) => all + workedS, 0)).toBe(
    shifts.reduce((all, one) => all + workedIn(one), 0)
  )
})

describe('the name written once more', () => {
  test.each([
    ['Inés Caldera', 'Inés Caldera', true],
    ['  ines   caldera ', 'Inés Caldera', true],
    ['Ines', 'Inés Caldera', false],
    ['', 'Inés Caldera', false],
    [' ', '   ', false],
    ['Ann', 'Anne', false],
  ])('“%s” for “%s”: %s', (typed, name, isSame) => {
    expect(isSameName(typed, name)).toBe(isSame)
  })
})

import { expect, test } from 'vitest'

import { type CrewFacts, countCrew, crewInOrder } from '@/components/crew/crew-order'
import type { Whereabouts } from '@/lib/hooks'

const now = new Date('2027-02-27T10:00:00.000Z')
const minutesAgo = (minutes: number) => new Date(now.getTime() - minutes * 60_000).toISOString()

function person(personId: string, some: Partial<Whereabouts> = {}): Whereabouts {
  return {
    personId,
    state: 'here',
    since: minutesAgo(5),
    part: null,
    tree: null,
    row: null,
    ...some,
  }
}

function facts(where: Whereabouts[], some: Partial<CrewFacts> = {}): CrewFacts {
  return {
    where,
    now,
    heardAt: new Map(),
    quietMinutes: 15,
    isCalling: () => false,
    hazardBy: new Map(),
    lackOf: () => null,
    toGo: () => 0,
    isReady: () => true,
    nameOf: (id) => id,
    ...some,
  }
}

test('who needs somebody comes first: calls, hazards, the quiet, the long, then trees, the free, breaks', () => {
  const where = [
    person('break', { state: 'break' }),
    person('free'),
    person('working', { tree: 1, part: 'holder' }),
    person('long', { tree: 2, part: 'holder', since: minutesAgo(60) }),
    person('quiet', { tree: 3, part: 'holder' }),
    person('hazard'),
    person('calling', { tree: 4, part: 'holder' }),
  ]
  const lines = crewInOrder(
    facts(where, {
      heardAt: new Map([['quiet', minutesAgo(20)]]),
      isCalling: (id) => id === 'calling',
      hazardBy: new Map([['hazard', 9]]),
    })
  )

  expect(lines.map(({ personId }) => personId)).toEqual([
    'calling',
    'hazard',
    'quiet',
    'long',
    'working',
    'free',
    'break',
  ])
  expect(lines[2]?.need).toEqual({ kind: 'quiet', minutes: 20 })
})

test('without a phone nobody is missed by it', () => {
  const [line] = crewInOrder(facts([person('hob', { tree: 1, part: 'holder' })]))
  expect(line).toMatchObject({ need: null, heard: 'no_phone' })
})

test('when somebody was last heard is said of everybody, once it is known', () => {
  const heardAt = new Map([['ann', minutesAgo(4)]])
  const heardOf = (some: Partial<CrewFacts>) => crewInOrder(facts([person('ann')], some))[0]?.heard
  expect(heardOf({ heardAt })).toBe(4)
  expect(heardOf({ heardAt: null })).toBeNull()
})

test('who has a tree again after flagging a hazard does not wait any more', () => {
  const where = [person('teo', { tree: 4, part: 'holder' })]
  const [line] = crewInOrder(facts(where, { hazardBy: new Map([['teo', 9]]) }))
  expect(line?.need).toBeNull()
})

test('everybody is counted once: at a tree, free or on a break', () => {
  const where = [
    person('a', { tree: 1, state: 'break' }),
    person('b'),
    person('c', { state: 'break' }),
  ]
  expect(countCrew(where)).toEqual({ atTree: 1, free: 1, onBreak: 1 })
})

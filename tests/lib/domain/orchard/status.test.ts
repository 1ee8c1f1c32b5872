import { describe, expect, test } from 'vitest'

import {
  badgeOf,
  type Look,
  markOf,
  type Status,
  statusOf,
  type Work,
  works,
} from '@/lib/domain/orchard/status'

describe('statusOf', () => {
  test.each<[Work, Status]>([
    ['unpruned', 'unpruned'],
    ['begun', 'in_progress'],
    ['done', 'done'],
    ['left_out', 'unpruned'],
  ])('work %s, nobody there, no flag: %s', (work, status) => {
    expect(statusOf({ arboristFlag: false, held: false, diseaseFlag: false, work })).toBe(status)
  })

  test('an arborist flag comes before everything', () => {
    for (const work of works)
      for (const held of [true, false])
        for (const diseaseFlag of [true, false])
          expect(statusOf({ arboristFlag: true, held, diseaseFlag, work })).toBe('arborist')
  })

  test('a claim comes before a disease flag, a disease flag before done', () => {
    const sick = { arboristFlag: false, diseaseFlag: true }

    expect(statusOf({ ...sick, held: true, work: 'done' })).toBe('in_progress')
    expect(statusOf({ ...sick, held: false, work: 'begun' })).toBe('in_progress')
    expect(statusOf({ ...sick, held: false, work: 'done' })).toBe('disease')
    expect(statusOf({ ...sick, held: false, work: 'unpruned' })).toBe('disease')
  })

  test('a disease flag stays as a badge where another status is in front', () => {
    expect(badgeOf({ diseaseFlag: true })).toBe('disease')
    expect(badgeOf({ diseaseFlag: false })).toBeNull()
  })
})

describe('markOf', () => {
  const plain: Look = {
    status: 'unpruned',
    badge: null,
    dealtToMe: false,
    dealtTo: [],
    heldByMe: false,
    closed: false,
    initials: [],
  }

  test.each<[Partial<Look>, ReturnType<typeof markOf>]>([
    [{}, 'unpruned'],
    [{ status: 'done' }, 'done'],
    [{ dealtToMe: true }, 'dealt_to_me'],
    [{ dealtToMe: true, status: 'disease' }, 'dealt_to_me'],
    [{ dealtToMe: true, status: 'done' }, 'done'],
    [{ dealtToMe: true, closed: true }, 'closed'],
    [{ dealtTo: ['FB'] }, 'dealt'],
    [{ dealtTo: ['FB'], dealtToMe: true }, 'dealt_to_me'],
    [{ dealtTo: ['FB'], status: 'in_progress' }, 'in_progress'],
    [{ dealtTo: ['FB'], status: 'disease' }, 'disease'],
    [{ dealtTo: ['FB'], closed: true }, 'closed'],
    [{ heldByMe: true, dealtToMe: true, status: 'in_progress' }, 'held_by_me'],
    [{ heldByMe: true, closed: true, status: 'in_progress' }, 'held_by_me'],
    [{ heldByMe: true, closed: true, status: 'arborist' }, 'arborist'],
  ])('%o is drawn as %s', (look, mark) => {
    expect(markOf({ ...plain, ...look })).toBe(mark)
  })
})

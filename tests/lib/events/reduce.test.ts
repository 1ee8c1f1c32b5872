import fc from 'fast-check'
import { describe, expect, test } from 'vitest'

import { commandArgs } from '@/lib/events/command-args'
import type { Command } from '@/lib/events/commands'
import { missingForClaim } from '@/lib/events/missing'
import { predict } from '@/lib/events/predict'
import { reduce } from '@/lib/events/reduce'
import { stateOf } from '@/lib/events/snapshot'
import { read, type Shape } from '@/lib/util/shape'

import { ann, aState, bo, happened, idOf, later } from './a-state'

describe('numbers', () => {
  const state = aState()
  const arrival = happened('person_left', { left: [bo] }, { personId: bo })

  test('the next number is folded', () => {
    expect(reduce(state, { n: 11, ...arrival })).toMatchObject({ head: 11 })
  })

  test('a number alone only moves the head', () => {
    expect(reduce(state, { n: 11 })).toEqual({ ...state, head: 11 })
  })

  test.each([9, 10, 12])('number %i after 10 changes nothing', (n) => {
    expect(reduce(state, { n, ...arrival })).toBe(state)
  })
})

const kinds = [
  'orchard_changed person_added person_joined person_changed person_admitted person_removed',
  'consent_given skill_granted skill_ended round_opened round_closed shift_scheduled shift_opened',
  'shift_closed off_changed briefing_written briefing_given briefing_signed person_arrived',
  'break_started break_ended person_left equipment_checked tool_added tool_taken tool_returned',
  'tool_failed tool_mended tools_cleaned trees_dealt trees_taken_back big_cuts_marked tree_claimed',
  'big_cuts_unmarked',
  'tree_undone tree_joined tree_handed_over tree_left tree_released tree_finished also_worked',
  'tree_finished_late claim_ended flag_raised flag_withdrawn photo_added stop_called stop_answered',
  'work_resumed tree_looked_over brush_taken brush_finished brush_marked brush_directed',
  'constructor __proto__ toString',
].flatMap((line) => line.split(' '))

/** Words that bodies use, and words that every object knows. */
const key = fc.constantFrom(
  'person',
  'role',
  'tool',
  'tree',
  'trees',
  'to',
  'from',
  'claim',
  'people',
  'part',
  'flag',
  'kind',
  'state',
  'stop',
  'block',
  'shift',
  'off',
  'what',
  'version',
  'change',
  'round',
  'work',
  'claimsEnded',
  'claimsLeft',
  'dealsEnded',
  'dirty',
  'returned',
  'left',
  'channel',
  '__proto__',
  'constructor'
)
const word = fc.oneof(
  fc.constantFrom(
    ann,
    bo,
    idOf('shift'),
    idOf('nobody'),
    'holder',
    'lead',
    'done',
    '__proto__',
    'constructor'
  ),
  fc.integer({ min: -1, max: 5 }),
  fc.jsonValue()
)
const value = fc.oneof(
  word,
  fc.array(fc.oneof(word, fc.array(word, { maxLength: 3 })), { maxLength: 3 }),
  fc.dictionary(key, word, { maxKeys: 3 })
)
const body = fc.oneof(fc.dictionary(key, value, { maxKeys: 8 }), fc.jsonValue())

test('no event makes reduce throw, and what it gives is a whole state', () => {
  fc.assert(
    fc.property(fc.constantFrom(...kinds), body, body, (kind, told, leadBody) => {
      const before = aState({ claims: { [idOf('claim')]: { ...aClaimOfAnn } } })
      const frozen = JSON.stringify(before)

      const after = reduce(before, { n: 11, ...happened(kind, told, { leadBody }) })

      expect(JSON.stringify(before)).toBe(frozen)
      if (after === 'fetch again') return
      expect(after.head).toBe(11)
      const packed = {
        work: { done: [], begun: [], leftOut: [] },
        lookedOver: { passed: [], reopened: [] },
        hauled: [],
      }
      expect(stateOf({ ...after, ...packed })).not.toBeNull()
    }),
    { numRuns: 3000 }
  )
})

const aClaimOfAnn = {
  tree: 1,
  row: null,
  purpose: 'work',
  kind: 'prune',
  ladder: false,
  buddyId: null,
  openedAt: later,
  people: { [ann]: 'holder' },
} as const

test('no command makes predict throw, whatever the day is like', () => {
  const names = Object.keys(commandArgs) as (keyof typeof commandArgs)[]
  const args = fc.dictionary(key, value, { maxKeys: 6 })
  fc.assert(
    fc.property(fc.constantFrom(...names), args, fc.boolean(), (name, wild, inShift) => {
      const known = read(commandArgs[name] as Shape, wild)
      if (!known) return
      const state = aState(inShift ? {} : { shifts: {}, attendance: {}, workRoundId: null })
      const command = {
        id: idOf('new'),
        name,
        orchardId: state.orchardId,
        personId: ann,
        args: known.value,
      }

      // Whatever is of the shape is a command.
      predict(state, command as Command, { now: later })
      missingForClaim(state, { trees: new Map(), blocks: new Map() }, 1, ann)
    }),
    { numRuns: 1000 }
  )
})

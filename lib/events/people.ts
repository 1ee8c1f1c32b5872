/** Who is in the orchard, with which role, skills and consent. */

import * as shape from '@/lib/util/shape'

import { type Folded, type Folds, onlyChanges, type Predictions, refuse, when } from './family'
import { isLead, knowsAbout } from './look-ups'
import { withChanged, withEntry, withoutKeys } from './record'
import { dateOnly, id, number, orNull, role, skill } from './shapes'
import type { State } from './state'

const person = shape.object({ person: id })
const added = shape.object({
  person: id,
  role,
  admitted: shape.withDefault(shape.boolean, true),
  minor: shape.optional(shape.boolean),
  guardianId: orNull(id),
})
const changed = shape.object({
  person: id,
  role: shape.optional(role),
  minor: shape.optional(shape.boolean),
  guardianId: orNull(id),
})
const consent = shape.object({ person: id, season: number })
const granted = shape.object({ person: id, skill, until: orNull(dateOnly) })
const ended = shape.object({ person: id, skill })

export const peopleFolds: Folds = {
  person_added: when(added, add),
  person_joined: when(added, add),
  person_changed: when(changed, (state, { person, role, minor, guardianId }): Folded => {
    // Another role hears and knows other things.
    if (person === state.me.personId && role && role !== state.me.role) return 'fetch again'
    // Whose consent counts depends on age, and the referee has the list.
    const turns = minor !== undefined && minor !== Object.hasOwn(state.minors, person)
    if (turns) return 'fetch again'
    return {
      ...state,
      people: withChanged(state.people, person, (known) => ({
        ...known,
        role: role ?? known.role,
      })),
      minors: minorsAfter(state, person, minor, guardianId),
    }
  }),
  person_admitted: when(person, (state, { person }) => ({
    ...state,
    people: withChanged(state.people, person, (known) => ({ ...known, admitted: true })),
  })),
  person_removed: when(person, remove),
  // The name itself is dropped where names are kept.
  person_forgotten: when(person, remove),
  // Whom a phone serves decides what it is told; leads are told everything anyway.
  login_ended: (state, _, { personId }) => (isServed(state, personId) ? 'fetch again' : state),
  login_linked: (state) => (isLead(state) ? state : 'fetch again'),
  invite_made: onlyChanges,
  invite_ended: onlyChanges,
  handed_in: onlyChanges,
  hand_in_accepted: onlyChanges,
  consent_given: when(consent, (state, { person, season }) => ({
    ...state,
    consents: withEntry(
      state.consents,
      person,
      Math.max(season, state.consents[person] ?? Number.NEGATIVE_INFINITY)
    ),
  })),
  skill_granted: when(granted, (state, { person, skill, until }) => ({
    ...state,
    skills: withEntry(state.skills, person, { ...state.skills[person], [skill]: until }),
  })),
  skill_ended: when(ended, (state, { person, skill }) => {
    const { [skill]: _, ...others } = state.skills[person] ?? {}
    const skills = withoutKeys(state.skills, [person])
    const keepsSome = Object.keys(others).length > 0
    return { ...state, skills: keepsSome ? withEntry(skills, person, others) : skills }
  }),
}

/** Somebody else of whom this volunteer's phone knows more than others do. */
function isServed(state: State, personId: string): boolean {
  if (isLead(state) || personId === state.me.personId) return false
  if (hearsFindings(state)) return true
  const { skills, consents, minors, failedEquipment } = state
  return [skills, consents, minors, failedEquipment].some((known) => Object.hasOwn(known, personId))
}

/** What was found at their trees does not say of whom: they may be of somebody whom this phone served until now. */
function hearsFindings(state: State): boolean {
  return !isLead(state) && Object.keys(state.lookedOver).length > 0
}

function add(state: State, body: shape.Out<typeof added>): State {
  const { person, role, admitted, minor, guardianId } = body
  return {
    ...state,
    people: withEntry(state.people, person, { role, admitted }),
    minors: minorsAfter(state, person, minor, guardianId),
  }
}

function remove(state: State, { person }: { person: string }): Folded {
  if (person === state.me.personId || hearsFindings(state)) return 'fetch again'
  return {
    ...state,
    people: withoutKeys(state.people, [person]),
    attendance: withoutKeys(state.attendance, [person]),
    briefed: withoutKeys(state.briefed, [person]),
    equipped: withoutKeys(state.equipped, [person]),
    failedEquipment: withoutKeys(state.failedEquipment, [person]),
    skills: withoutKeys(state.skills, [person]),
    consents: withoutKeys(state.consents, [person]),
    minors: withoutKeys(state.minors, [person]),
    notFound: withoutKeys(state.notFound, [person]),
  }
}

function minorsAfter(
  state: State,
  personId: string,
  minor: boolean | undefined,
  guardianId: string | null
): State['minors'] {
  if (minor === undefined) return state.minors
  return minor
    ? withEntry(state.minors, personId, { guardianId })
    : withoutKeys(state.minors, [personId])
}

export const peoplePredictions: Predictions = {
  add_person: (state, { id, args }) => {
    const beyond = args.role === 'manager' || args.role === 'lead'
    const minor = args.ageBand === 'minor'
    return (
      refuse(state.me.role === 'lead' && beyond && 'not_yours_to_give') ?? [
        {
          kind: 'person_added',
          body: {
            person: id,
            role: args.role,
            ...(minor && { minor, guardianId: args.guardian }),
          },
        },
      ]
    )
  },
  admit_person: (_, { args }) => [{ kind: 'person_admitted', body: { person: args.subject } }],
  give_consent: (state, { personId, args }) => {
    const minor = knowsAbout(state, personId) ? state.minors[personId] : undefined
    const notGuardian = minor !== undefined && (!args.by || args.by !== minor.guardianId)
    const inForce = state.orchard.houseRules.consent_version
    const otherText = inForce !== undefined && args.textVersion !== inForce
    const round = state.workRoundId === null ? undefined : state.rounds[state.workRoundId]
    return (
      refuse(notGuardian && 'guardian_must_consent') ??
      refuse(otherText && 'consent_changed') ??
      refuse(!round && 'no_round') ?? [
        { kind: 'consent_given', body: { person: personId, season: round?.season } },
      ]
    )
  },
}

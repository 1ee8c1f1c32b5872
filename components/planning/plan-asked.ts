/** A shift as its plan is asked for: who is here with which skills and tools, and which trees are at hand. */

import type { HeldTree } from '@/lib/domain/planning/keep-apart'
import { learnMinutes, meanMinutesOf } from '@/lib/domain/planning/minutes-per-tree'
import { shareAtTrees } from '@/lib/domain/planning/share-at-trees'
import type { PlanAsked, PlanTree } from '@/lib/domain/planning/shift-plan'
import { type PlanPerson, type Team, teamsOf } from '@/lib/domain/planning/shift-teams'
import { keyOfKind, kindOf } from '@/lib/domain/planning/tree-times'
import { asksLadder } from '@/lib/events/missing'
import type { Claim, DateOnly, Skill, State } from '@/lib/events/state'
import { type Aside, type DayKnown, dayAsked, whyAside } from './day-asked'

/** `people`: those who are planned for. */
export type PlanKnown = DayKnown & {
  today: DateOnly
  /** Of these blocks. */
  blocks: ReadonlySet<number>
  near: PlanAsked['near']
}

export type Planned = {
  asked: PlanAsked
  withoutAdult: readonly string[]
  /** Not at hand: closed, off today, or kept for somebody already. */
  aside: Omit<Aside, 'beyond'> & { dealt: number }
  /** Finished trees that the minutes rest on. */
  finished: number
}

export function planAsked(known: PlanKnown): Planned {
  const { state, ground } = known
  const claims = Object.values(state.claims)
  const { teams, withoutAdult } = teamsOf(
    known.people.map((id) => personOf(state, id, known.today)),
    claims.map(({ people }) => Object.keys(people).filter((id) => people[id] !== 'learner'))
  )
  const { asked: day } = dayAsked(known)
  const minutesOf = meansOf(known, day)
  const { trees, aside } = atHand(known, minutesOf)
  const kept = (team: Team) =>
    Object.entries(state.deals).filter(([, to]) => team.some(({ id }) => to.includes(id)))
  return {
    withoutAdult: withoutAdult.map(({ id }) => id),
    aside,
    finished: day.times.length,
    asked: {
      teams,
      trees,
      loads: teams.map(
        (team) => kept(team).reduce((sum, [no]) => sum + minutesOf(Number(no)), 0) / team.length
      ),
      from: teams.map((team) => {
        const at = claims.find(({ people }) => team.some(({ id }) => Object.hasOwn(people, id)))
        return ground.trees.get(at?.tree ?? -1) ?? null
      }),
      minutes: day.minutesLeft * shareAtTrees(day.atTreesMinutes, day.hereMinutes).share,
      near: known.near,
      held: heldNow(known, claims),
    },
  }
}

function personOf(state: State, id: string, today: DateOnly): PlanPerson {
  const may = (skill: Skill) => {
    const until = state.skills[id]?.[skill]
    return until !== undefined && (until === null || until >= today)
  }
  const has = (kind: 'saw' | 'ladder') =>
    Object.values(state.tools).some((tool) => tool.kind === kind && tool.fit && tool.heldBy === id)
  const role = state.people[id]?.role
  return {
    id,
    handSaw: may('hand_saw'),
    ladder: may('ladder'),
    prunesAlone: may('prunes_alone') || role === 'lead' || role === 'manager',
    isMinor: Object.hasOwn(state.minors, id),
    guardian: state.minors[id]?.guardianId ?? null,
    hasSaw: has('saw'),
    hasLadder: has('ladder'),
  }
}

/** What is left of a tree in minutes of one person, on average. */
function meansOf(
  { state, ground, sheet }: PlanKnown,
  { times, unfinished, day }: ReturnType<typeof dayAsked>['asked']
): (no: number) => number {
  const kinds = new Map(sheet.trees.map(kindOf).map((kind) => [keyOfKind(kind), kind]))
  const learned = learnMinutes(times, { unfinished, kinds: [...kinds.values()], day })
  const means = new Map(
    [...kinds].map(([key, kind]) => [key, meanMinutesOf(learned, kind, day)] as const)
  )
  return (no) => {
    const tree = ground.trees.get(no)
    const left = 1 - (state.work[no]?.share ?? 0) / 100
    return tree ? (means.get(keyOfKind(kindOf(tree))) ?? 0) * left : 0
  }
}

function atHand(known: PlanKnown, minutesOf: (no: number) => number) {
  const { state, sheet, blocks } = known
  const aside = { closed: 0, off: 0, dealt: 0 }
  const held = new Set(Object.values(state.claims).map(({ tree }) => tree))
  const sick = new Set(
    Object.values(state.flags).flatMap(({ kind, tree }) => (kind === 'disease' ? [tree] : []))
  )
  const asideOf = whyAside(known)
  const trees: PlanTree[] = []
  for (const tree of sheet.trees) {
    if (!blocks.has(tree.block) || held.has(tree.no)) continue
    const why = asideOf(tree)
    if (why === 'not_in_it') continue
    if (why === 'closed' || why === 'off') aside[why]++
    else if (Object.hasOwn(state.deals, tree.no)) aside.dealt++
    else {
      const { no, block, row, place, asksSaw: saw } = tree
      trees.push({
        ...{ no, block, row, place, saw },
        ladder: asksLadder(state, tree),
        marked: Object.hasOwn(state.marked, no),
        isSick: sick.has(no),
        minutes: minutesOf(no),
      })
    }
  }
  return { trees, aside }
}

function heldNow({ ground }: PlanKnown, claims: readonly Claim[]): HeldTree[] {
  return claims.flatMap(({ tree, people, ladder }) =>
    tree === null
      ? []
      : {
          no: tree,
          people: Object.keys(people),
          isOverhead: ladder || ground.trees.get(tree)?.asksSaw === true,
        }
  )
}

/** The day as the forecast asks it: what is left for whom is here, and what stands aside and why. */

import type { Tree } from '@/lib/domain/orchard/types'
import type { DayAsked } from '@/lib/domain/planning/day-ahead'
import type { BegunTree } from '@/lib/domain/planning/forecast'
import { shareOfBreaks } from '@/lib/domain/planning/share-at-trees'
import { kindOf, personMinutesOf, treeTimesOf, type Visit } from '@/lib/domain/planning/tree-times'
import { asksLadder, dealRules } from '@/lib/events/missing'
import type { Claim, Shift, Skill, State } from '@/lib/events/state'
import { putOffIn } from '@/lib/events/weather'
import type { View, WorkTimes } from '@/lib/hooks'

/** Why a tree is not counted as left: it is closed, its species is off, or nobody who is here may take it. */
export type Aside = { closed: number; off: number; beyond: number }

export type DayKnown = {
  state: State
  shift: Shift & { id: string }
  sheet: NonNullable<View['sheet']>
  ground: View['ground']
  times: WorkTimes
  /** Who prunes, or will. */
  people: readonly string[]
  nowMs: number
  /** When it ends: the shift, or the light. */
  endsMs: number
}

export function dayAsked(known: DayKnown): { asked: DayAsked; aside: Aside } {
  const { shift, times, people, ground, nowMs, endsMs } = known
  const visits = visitsOf(times)
  const { blocks, aside } = blocksOf(known, visits)
  const inHand = blocks.flatMap((block) => block.inHand)
  const here = times.shifts.find((one) => one.shift === shift.id) ?? { hereS: 0, breakS: 0 }
  const working = 1 - shareOfBreaks(here.breakS / 60, here.hereS / 60)
  const unfinished = [...inHand, ...blocks.flatMap((block) => block.waiting)]
  return {
    aside,
    asked: {
      day: shift.id,
      times: treeTimesOf(visits, ground.trees),
      unfinished: unfinished
        .filter(({ minutesSoFar }) => minutesSoFar > 0)
        .map(({ minutesSoFar, ...kind }) => ({ ...kind, shift: shift.id, minutes: minutesSoFar })),
      blocks,
      people: people.length,
      minutesLeft: (Math.max(0, endsMs - nowMs) / 60_000) * working,
      minutesADay: ((Date.parse(shift.endsAt) - Date.parse(shift.startsAt)) / 60_000) * working,
      atTreesMinutes:
        visits
          .filter((visit) => visit.shift === shift.id)
          .reduce((sum, visit) => sum + personMinutesOf(visit), 0) +
        pruningIn(known.state).reduce(
          (sum, claim) => sum + minutesAt(claim, Date.parse(times.at)),
          0
        ),
      hereMinutes: (here.hereS - here.breakS) / 60,
    },
  }
}

export function visitsOf({ visits }: WorkTimes): Visit[] {
  return visits.map(([tree, shift, round, result, seconds, people, teaching]) => ({
    tree,
    shift,
    round,
    result,
    seconds,
    people,
    teaching,
  }))
}

function pruningIn({ claims }: State): Claim[] {
  return Object.values(claims).filter(({ kind, tree }) => kind === 'prune' && tree !== null)
}

function minutesAt({ openedAt, people }: Claim, atMs: number): number {
  const working = Object.values(people).filter((part) => part !== 'learner').length
  return (Math.max(0, atMs - Date.parse(openedAt)) / 60_000) * working
}

type Block = { block: number; inHand: BegunTree[]; waiting: BegunTree[]; people: number }

function blocksOf(known: DayKnown, visits: readonly Visit[]): { blocks: Block[]; aside: Aside } {
  const { state, sheet, nowMs } = known
  const aside: Aside = { closed: 0, off: 0, beyond: 0 }
  const blocks = new Map<number, Block>(
    sheet.blocks.map(({ no }) => [no, { block: no, inHand: [], waiting: [], people: 0 }])
  )
  const held = new Map(pruningIn(state).map((claim) => [claim.tree, claim]))
  const soFar = minutesOfBegun(state, visits)
  const asideOf = whyAside(known)
  for (const tree of sheet.trees) {
    const block = blocks.get(tree.block)
    const claim = held.get(tree.no)
    const why = claim ? null : asideOf(tree)
    if (!block || why === 'not_in_it') continue
    if (why !== null) {
      aside[why]++
      continue
    }
    const minutes = soFar.get(tree.no) ?? 0
    const begun = { ...kindOf(tree), minutesSoFar: minutes + (claim ? minutesAt(claim, nowMs) : 0) }
    if (claim)
      block.people += Object.values(claim.people).filter((part) => part !== 'learner').length
    block[claim ? 'inHand' : 'waiting'].push(begun)
  }
  return { blocks: [...blocks.values()], aside }
}

type ForWhom = Pick<DayKnown, 'state' | 'shift' | 'ground' | 'people' | 'nowMs'>

/** Null: it can be begun. */
export function whyAside({ state, shift, ground, people, nowMs }: ForWhom) {
  const rules = dealRules(state, ground)
  // Light is not asked: a plan made before sunrise is for the day.
  const putOff = putOffIn(state, shift, { now: new Date(nowMs).toISOString() })
  const can = (skill: Skill) => people.some((id) => state.skills[id]?.[skill] !== undefined)
  const [saws, ladders] = [can('hand_saw'), can('ladder')]
  const stopped = new Set(
    Object.values(state.stops).flatMap(({ block, resumed }) => (resumed ? [] : [block]))
  )
  const notInIt = [
    'tree_done',
    'tree_left_out',
    'tree_not_in_round',
    'tree_not_standing',
    'no_round',
  ]
  return (tree: Tree): 'not_in_it' | keyof Aside | null => {
    const codes = rules.refusalsOf(tree.no).map(({ code }) => code)
    if (codes.some((code) => notInIt.includes(code))) return 'not_in_it'
    if (codes.length > 0 || stopped.has(tree.block)) return 'closed'
    if (putOff.offs(tree.species) !== undefined) return 'off'
    const isForLadder = asksLadder(state, tree)
    if (isForLadder && putOff.laddersOff !== null) return 'off'
    return (tree.asksSaw && !saws) || (isForLadder && !ladders) ? 'beyond' : null
  }
}

/** Of trees left half done, since they were last finished; the newest visit comes first. */
function minutesOfBegun(
  { workRoundId, work }: State,
  visits: readonly Visit[]
): Map<number, number> {
  const minutes = new Map<number, number>()
  const finished = new Set<number>()
  for (const visit of visits) {
    if (visit.round !== workRoundId || work[visit.tree]?.state !== 'begun') continue
    if (visit.result === 'done') finished.add(visit.tree)
    if (finished.has(visit.tree)) continue
    minutes.set(visit.tree, (minutes.get(visit.tree) ?? 0) + personMinutesOf(visit))
  }
  return minutes
}

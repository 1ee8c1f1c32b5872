/**
 * A proposal for who prunes what: each team a stretch of consecutive trees, as even as can be. What asks for a saw or a
 * ladder goes first, to those who may, and what stands beside it goes to the same team, so that nobody works next
 * to somebody else's ladder. Healthy trees come before sick ones. What does not fit is told with the reason.
 */

import { groupBy } from '@/lib/util/group-by'

import { type Demand, mayTake, type Team } from './shift-teams'
import { splitInOrder } from './split-in-order'

export type PlanTree = Demand & {
  no: number
  block: number
  row: number
  place: number
  /** Of one person. */
  minutes: number
  isSick: boolean
}

export type PlanAsked = {
  teams: readonly Team[]
  /** Minutes that each team has before it already. */
  loads: readonly number[]
  /** That can be dealt; everything that is closed, off or held is left out before. */
  trees: readonly PlanTree[]
  /** Minutes at trees until the end. */
  minutes: number
  /** What a limb can reach from a tree: the numbers of its neighbours. */
  near: (no: number) => readonly number[]
  /** Somebody who is not of this team works there with a saw or a ladder, or works at all. */
  heldByOthers: (no: number, team: Team) => 'overhead' | 'work' | null
}

export type WhyLeft = 'skills' | 'hours' | 'beside_overhead'

export type TeamPlan = {
  team: Team
  /** In the order in which they are walked to. */
  trees: readonly PlanTree[]
  /** Of each of the team, with what they had before. */
  minutes: number
}

export type ShiftPlan = {
  teams: readonly TeamPlan[]
  left: readonly { tree: PlanTree; why: WhyLeft }[]
}

export function planShift(asked: PlanAsked): ShiftPlan {
  const inOrder = inWalkingOrder(asked.trees)
  const demands = withNeighbours(asked, inOrder)
  const dealt = new Map<number, number>()
  const left = new Map<number, WhyLeft>()
  const loads = [...asked.loads]
  for (const isSick of [false, true]) {
    const some = inOrder.filter((tree) => tree.isSick === isSick)
    const byTeams = groupBy(some, (tree) => teamsFor(asked.teams, demands.get(tree.no)).join())
    // What only few may take comes first.
    const classes = [...byTeams].toSorted(([a], [b]) => a.split(',').length - b.split(',').length)
    for (const [teams, trees] of classes) {
      if (teams === '') for (const { no } of trees) left.set(no, 'skills')
      else dealClass({ asked, inOrder, dealt, left, loads }, teams.split(',').map(Number), trees)
    }
  }
  keepApart(asked, inOrder, dealt, left)
  return {
    teams: asked.teams.map((team, at) => {
      const own = inOrder.filter(({ no }) => dealt.get(no) === at)
      const trees = [...own.filter(({ isSick }) => !isSick), ...own.filter(({ isSick }) => isSick)]
      const minutes = own.reduce((sum, tree) => sum + tree.minutes, 0) / team.length
      return { team, trees, minutes: (asked.loads[at] ?? 0) + minutes }
    }),
    left: inOrder.flatMap((tree) => {
      const why = left.get(tree.no)
      return why ? [{ tree, why }] : []
    }),
  }
}

/** Up one row and down the next. */
export function inWalkingOrder<Placed extends Pick<PlanTree, 'block' | 'row' | 'place'>>(
  trees: readonly Placed[]
): Placed[] {
  const rows = [...groupBy(trees, ({ block, row }) => `${block}|${row}`).values()].toSorted(
    ([a], [b]) => (a && b ? a.block - b.block || a.row - b.row : 0)
  )
  return rows.flatMap((row, at) =>
    row.toSorted((a, b) => (at % 2 === 0 ? a.place - b.place : b.place - a.place))
  )
}

function isOverhead({ saw, ladder }: Demand): boolean {
  return saw || ladder
}

/** A tree beside one that asks for a saw or ladder asks for the same people, if anybody here may take that one. */
function withNeighbours(
  { teams, near }: PlanAsked,
  trees: readonly PlanTree[]
): ReadonlyMap<number, Demand> {
  const demands = new Map<number, Demand>(trees.map((tree) => [tree.no, tree]))
  for (const tree of trees) {
    if (!isOverhead(tree) || !teams.some((team) => mayTake(team, tree))) continue
    for (const no of near(tree.no)) {
      const own = demands.get(no)
      if (!own) continue
      const both = { ...own, saw: own.saw || tree.saw, ladder: own.ladder || tree.ladder }
      // Between a saw tree and a ladder tree that no team may have both of: kept apart afterwards.
      if (teams.some((team) => mayTake(team, both))) demands.set(no, both)
    }
  }
  return demands
}

function teamsFor(teams: readonly Team[], demand: Demand | undefined): number[] {
  return teams.flatMap((team, at) => (demand && mayTake(team, demand) ? [at] : []))
}

type Dealing = {
  asked: PlanAsked
  inOrder: readonly PlanTree[]
  dealt: Map<number, number>
  left: Map<number, WhyLeft>
  loads: number[]
}

/** Trees that the same teams may take, one stretch for each, near what each has already. */
function dealClass(
  { asked, inOrder, dealt, left, loads }: Dealing,
  teams: readonly number[],
  trees: readonly PlanTree[]
): void {
  const middles = middlesOf(inOrder, dealt)
  const inTurn = teams.toSorted(
    (a, b) => (middles.get(a) ?? Infinity) - (middles.get(b) ?? Infinity) || a - b
  )
  const sized = inTurn.map((team) => ({
    load: loads[team] ?? 0,
    people: asked.teams[team]?.length ?? 1,
  }))
  const { pieces, given } = splitInOrder(
    trees.map(({ minutes }) => minutes),
    sized,
    asked.minutes
  )
  for (const [turn, [from, to]] of pieces.entries()) {
    const team = inTurn[turn] ?? 0
    for (const { no, minutes } of trees.slice(from, to)) {
      dealt.set(no, team)
      loads[team] = (loads[team] ?? 0) + minutes / (asked.teams[team]?.length ?? 1)
    }
  }
  for (const { no } of trees.slice(given)) left.set(no, 'hours')
}

/** Where in the walk a team's trees lie on average. */
function middlesOf(
  inOrder: readonly PlanTree[],
  dealt: ReadonlyMap<number, number>
): ReadonlyMap<number, number> {
  const places = groupBy(inOrder.keys(), (at) => dealt.get(inOrder[at]?.no ?? -1) ?? -1)
  return new Map(
    [...places].map(([team, all]) => [team, all.reduce((sum, at) => sum + at, 0) / all.length])
  )
}

/** Dealing lifts the rule about ladder and saw work next to a tree, so the plan keeps it: what breaks it is not dealt. */
function keepApart(
  { teams, near, heldByOthers }: PlanAsked,
  inOrder: readonly PlanTree[],
  dealt: Map<number, number>,
  left: Map<number, WhyLeft>
): void {
  const drop = (no: number) => {
    dealt.delete(no)
    left.set(no, 'beside_overhead')
  }
  const overhead = new Set(inOrder.flatMap((tree) => (isOverhead(tree) ? [tree.no] : [])))
  for (const { no } of inOrder) {
    const team = teams[dealt.get(no) ?? -1]
    if (!team) continue
    const held = near(no).map((other) => (other === no ? null : heldByOthers(other, team)))
    if (held.includes('overhead') || (overhead.has(no) && held.includes('work'))) drop(no)
  }
  for (const { no } of inOrder) {
    const team = dealt.get(no)
    if (team === undefined || !overhead.has(no)) continue
    for (const other of near(no)) {
      const theirs = dealt.get(other)
      if (other !== no && theirs !== undefined && theirs !== team) drop(other)
    }
  }
}

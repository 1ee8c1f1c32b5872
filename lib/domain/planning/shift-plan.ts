/**
 * A proposal for who prunes what: each team a stretch of consecutive trees, as even as can be. What asks for a saw or a
 * ladder goes first, to those who may, and what stands beside it goes to the same team, so that nobody works next
 * to somebody else's ladder. Healthy trees come before sick ones. What does not fit is told with the reason.
 */

import { groupBy } from '@/lib/util/group-by'

import { type Apart, tooNear } from './keep-apart'
import { type Demand, isOverhead, mayTake, type Team } from './shift-teams'
import { splitInOrder } from './split-in-order'
import { inWalkingOrder, type Place } from './walking-order'

export type PlanTree = Demand &
  Place & {
    no: number
    /** Of one person. */
    minutes: number
    isSick: boolean
  }

export type PlanAsked = Apart & {
  /** Minutes that each team has before it already. */
  loads: readonly number[]
  /** Where each team is now, if anybody knows. */
  from: readonly (Place | null)[]
  /** That can be dealt; everything that is closed, off or held is left out before. */
  trees: readonly PlanTree[]
  /** Minutes at trees until the end. */
  minutes: number
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

/** What is kept apart leaves hours to those who lose it: they are filled once more with what was left for want of hours. */
const dealings = 2

export function planShift(asked: PlanAsked): ShiftPlan {
  const inOrder = inWalkingOrder(asked.trees, blocksFirst(asked.from))
  const demands = withNeighbours(asked, inOrder)
  const mayTakeIt = teamsFor(asked.teams)
  const dealt = new Map<number, number>()
  const left = new Map<number, WhyLeft>()
  for (let turn = 0; turn < dealings; turn++) {
    const loads = loadsOf(asked, inOrder, dealt)
    for (const isSick of [false, true]) {
      const open = inOrder.filter(
        (tree) =>
          tree.isSick === isSick &&
          !dealt.has(tree.no) &&
          (left.get(tree.no) ?? 'hours') === 'hours'
      )
      const byTeams = groupBy(open, (tree) => mayTakeIt(demands.get(tree.no)))
      // What only few may take comes first.
      const classes = [...byTeams].toSorted(([a], [b]) => a.split(',').length - b.split(',').length)
      for (const [teams, trees] of classes) {
        if (teams === '') for (const { no } of trees) left.set(no, 'skills')
        else dealClass({ asked, inOrder, dealt, left, loads }, teams.split(',').map(Number), trees)
      }
    }
    for (const no of tooNear(asked, inOrder, dealt)) {
      dealt.delete(no)
      left.set(no, 'beside_overhead')
    }
  }
  const minutes = loadsOf(asked, inOrder, dealt)
  const byTeam = groupBy(inOrder, ({ no }) => dealt.get(no) ?? null)
  return {
    teams: asked.teams.map((team, at) => {
      const own = byTeam.get(at) ?? []
      const [healthy, sick] = [
        own.filter(({ isSick }) => !isSick),
        own.filter(({ isSick }) => isSick),
      ]
      return {
        team,
        trees: [...inWalkingOrder(healthy), ...inWalkingOrder(sick)],
        minutes: minutes[at] ?? 0,
      }
    }),
    left: inOrder.flatMap((tree) => {
      const why = left.get(tree.no)
      return why ? [{ tree, why }] : []
    }),
  }
}

/** Where most teams are, one goes on; the other blocks follow in the orchard's order. */
function blocksFirst(from: PlanAsked['from']): (block: number) => number {
  const here = groupBy(from, (place) => place?.block ?? null)
  return (block) => -(here.get(block)?.length ?? 0)
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

/** Which teams may take a tree, as one text; there are few demands and many trees. */
function teamsFor(teams: readonly Team[]): (demand: Demand | undefined) => string {
  const known = new Map<string, string>()
  return (demand) => {
    if (!demand) return ''
    const key = `${demand.saw}${demand.ladder}${demand.marked}`
    const may =
      known.get(key) ?? teams.flatMap((team, at) => (mayTake(team, demand) ? [at] : [])).join()
    known.set(key, may)
    return may
  }
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
  const whereIs = (team: number) => middles.get(team) ?? placeInWalk(inOrder, asked.from[team])
  const inTurn = teams.toSorted((a, b) => whereIs(a) - whereIs(b) || a - b)
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
      left.delete(no)
      loads[team] = (loads[team] ?? 0) + minutes / (asked.teams[team]?.length ?? 1)
    }
  }
  for (const { no } of trees.slice(given)) left.set(no, 'hours')
}

/** Minutes of each team, with what it had before. */
function loadsOf(
  { teams, loads }: PlanAsked,
  inOrder: readonly PlanTree[],
  dealt: ReadonlyMap<number, number>
): number[] {
  const sums = [...loads]
  for (const { no, minutes } of inOrder) {
    const team = dealt.get(no)
    if (team !== undefined) sums[team] = (sums[team] ?? 0) + minutes / (teams[team]?.length ?? 1)
  }
  return sums
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

/** Beside which tree of the walk a team stands; whoever is nowhere in particular comes last. */
function placeInWalk(inOrder: readonly PlanTree[], from: Place | null | undefined): number {
  const at = from
    ? inOrder.findIndex(({ block, row }) => block === from.block && row >= from.row)
    : -1
  return at < 0 ? inOrder.length : at
}

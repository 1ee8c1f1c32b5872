/**
 * A proposal for who prunes what: each team a stretch of consecutive trees, as even as can be. What asks for a saw or a
 * ladder goes first, to those who may, and what stands beside it goes to the same team, so that nobody works next
 * to somebody else's ladder. Healthy trees come before sick ones. What does not fit is told with the reason.
 */

import { groupBy } from '@/lib/util/group-by'

import { type Demand, mayTake, type Team } from './shift-teams'
import { splitInOrder } from './split-in-order'

export type Place = { block: number; row: number; place: number }

export type PlanTree = Demand &
  Place & {
    no: number
    /** Of one person. */
    minutes: number
    isSick: boolean
  }

export type HeldTree = {
  no: number
  people: readonly string[]
  /** With a saw or a ladder. */
  isOverhead: boolean
}

export type PlanAsked = {
  teams: readonly Team[]
  /** Minutes that each team has before it already. */
  loads: readonly number[]
  /** Where each team is now, if anybody knows. */
  from: readonly (Place | null)[]
  /** That can be dealt; everything that is closed, off or held is left out before. */
  trees: readonly PlanTree[]
  /** Minutes at trees until the end. */
  minutes: number
  /** What a limb can reach from a tree: the numbers of its neighbours. */
  near: (no: number) => readonly number[]
  /** Trees that somebody is at. */
  held: readonly HeldTree[]
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
  const inOrder = inWalkingOrder(asked.trees, blocksFirst(asked.from))
  const demands = withNeighbours(asked, inOrder)
  const mayTakeIt = teamsFor(asked.teams)
  const dealt = new Map<number, number>()
  const left = new Map<number, WhyLeft>()
  const loads = [...asked.loads]
  for (const isSick of [false, true]) {
    const some = inOrder.filter((tree) => tree.isSick === isSick)
    const byTeams = groupBy(some, (tree) => mayTakeIt(demands.get(tree.no)))
    // What only few may take comes first.
    const classes = [...byTeams].toSorted(([a], [b]) => a.split(',').length - b.split(',').length)
    for (const [teams, trees] of classes) {
      if (teams === '') for (const { no } of trees) left.set(no, 'skills')
      else dealClass({ asked, inOrder, dealt, left, loads }, teams.split(',').map(Number), trees)
    }
  }
  keepApart(asked, inOrder, dealt, left)
  const byTeam = groupBy(inOrder, ({ no }) => dealt.get(no) ?? null)
  return {
    teams: asked.teams.map((team, at) => {
      const own = byTeam.get(at) ?? []
      const [healthy, sick] = [
        own.filter(({ isSick }) => !isSick),
        own.filter(({ isSick }) => isSick),
      ]
      const minutes = own.reduce((sum, tree) => sum + tree.minutes, 0) / team.length
      return {
        team,
        trees: [...inWalkingOrder(healthy), ...inWalkingOrder(sick)],
        minutes: (asked.loads[at] ?? 0) + minutes,
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

/** Row by row, each from the end that is nearer to where one comes from. */
export function inWalkingOrder<Placed extends Place>(
  trees: readonly Placed[],
  rankOf: (block: number) => number = () => 0
): Placed[] {
  const rows = [...groupBy(trees, ({ block, row }) => `${block}|${row}`).values()].toSorted(
    ([a], [b]) => (a && b ? rankOf(a.block) - rankOf(b.block) || inPlates(a, b) : 0)
  )
  let place = 0
  return rows.flatMap((row) => {
    const upwards = row.toSorted((a, b) => a.place - b.place)
    const [low, high] = [upwards.at(0)?.place ?? 0, upwards.at(-1)?.place ?? 0]
    const isUp = Math.abs(low - place) <= Math.abs(high - place)
    place = isUp ? high : low
    return isUp ? upwards : upwards.toReversed()
  })
}

function inPlates(a: Place, b: Place): number {
  return a.block - b.block || a.row - b.row
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

/** Beside which tree of the walk a team stands; whoever is nowhere in particular comes last. */
function placeInWalk(inOrder: readonly PlanTree[], from: Place | null | undefined): number {
  const at = from
    ? inOrder.findIndex(({ block, row }) => block === from.block && row >= from.row)
    : -1
  return at < 0 ? inOrder.length : at
}

/** Dealing lifts the rule about ladder and saw work next to a tree, so the plan keeps it: what breaks it is not dealt. */
function keepApart(
  { teams, near, held }: PlanAsked,
  inOrder: readonly PlanTree[],
  dealt: Map<number, number>,
  left: Map<number, WhyLeft>
): void {
  const drop = (no: number) => {
    dealt.delete(no)
    left.set(no, 'beside_overhead')
  }
  const overhead = new Set(inOrder.flatMap((tree) => (isOverhead(tree) ? [tree.no] : [])))
  for (const there of held) {
    for (const no of near(there.no)) {
      const isTheirs = teams[dealt.get(no) ?? -1]?.some(({ id }) => there.people.includes(id))
      if (isTheirs === false && (there.isOverhead || overhead.has(no))) drop(no)
    }
  }
  for (const no of overhead) {
    const team = dealt.get(no)
    if (team === undefined) continue
    for (const other of near(no)) {
      const theirs = dealt.get(other)
      if (theirs !== undefined && theirs !== team) drop(other)
    }
  }
}

/**
 * Why a person cannot have a tree now, for greying on the map and for the next tree. The referee
 * decides (private.missing_of_tree, private.missing_for_pruning); this is never stricter.
 */

import type { Tree } from '@/lib/domain/orchard/types'

import type { Refusal } from './answer'
import { buddyLacks } from './company'
import { areNeighbours, type Ground, isWithin, metresApart } from './ground'
import { hasFlag, holderOf, knowsAbout, openShift } from './look-ups'
import type { WorkKind } from './missing-person'
import type { Claim, DateOnly, Instant, Shift, Skill, State } from './state'
import { type PutOff, putOffIn } from './weather'

export type Wish = {
  kind?: WorkKind
  ladder?: boolean
  helpers?: readonly string[]
  learners?: readonly string[]
  buddy?: string | null
  /** Today where the orchard is. Left out, a skill with an end counts as held: the referee knows the day. */
  today?: DateOnly
  /** The referee's clock. Left out, weather puts nothing off. */
  now?: Instant
}

export function missingOfTree(
  state: State,
  ground: Ground,
  treeNo: number,
  personId: string,
  wish: Wish = {}
): Refusal[] {
  return treeRules(state, ground, personId, wish)(treeNo)
}

/** The same for many trees: what is asked of the state is asked once. */
export function treeRules(
  state: State,
  ground: Ground,
  personId: string,
  wish: Wish = {}
): (treeNo: number) => Refusal[] {
  const shift = openShift(state)
  if (!shift) return () => []
  const weather = putOffIn(state, shift, { ground, now: wish.now })
  const day = { ...aroundTrees(state, ground), shift, weather }
  return (treeNo) => {
    const tree = ground.trees.get(treeNo)
    if (!tree) return []
    const asked = { day, tree, personId, wish, mine: isDealtTo(state, treeNo, personId) }
    return [
      ...closedForWork(day, tree, wish),
      ...takenByOthers(asked),
      ...offToday(asked),
      ...(wish.kind === undefined || wish.kind === 'prune' ? forPruning(asked) : []),
    ]
  }
}

export type DealRules = {
  /** Why it cannot be dealt to anybody: the same rules as private.cannot_be_dealt. */
  refusalsOf: (treeNo: number) => Refusal[]
  /** Dealing lifts the rule about ladder and saw work next to a tree: whoever deals should know. */
  worksNextTo: (treeNo: number, to: readonly string[]) => Refusal | null
}

export function dealRules(state: State, ground: Ground): DealRules {
  const around = aroundTrees(state, ground)
  return {
    refusalsOf: (treeNo) => {
      if (state.workRoundId === null) return [{ code: 'no_round' }]
      const tree = ground.trees.get(treeNo)
      const claim = around.held.get(treeNo)?.claim
      const held = claim && {
        code: 'tree_in_progress',
        detail: { tree: treeNo, person: holderOf(claim) },
      }
      return tree ? [...closedForWork(around, tree), ...found([held])] : []
    },
    worksNextTo: (treeNo, to) => {
      const tree = ground.trees.get(treeNo)
      const near = tree && overheadNextTo(around, tree, tree.asksSaw, to)
      return near ? { code: 'works_next_to_it', detail: { tree: near.no } } : null
    },
  }
}

type Held = { tree: Tree; claim: Claim }
type Around = {
  state: State
  ground: Ground
  species: readonly string[] | undefined
  held: ReadonlyMap<number, Held>
  keepOuts: readonly { tree: Tree; metres: number }[]
  flagged: ReadonlySet<number>
}
type Day = Around & { shift: Shift; weather: PutOff }
type Asked = { day: Day; tree: Tree; personId: string; wish: Wish; mine: boolean }

function aroundTrees(state: State, ground: Ground): Around {
  const held = new Map<number, Held>()
  for (const claim of Object.values(state.claims)) {
    const tree = claim.tree === null ? undefined : ground.trees.get(claim.tree)
    if (tree) held.set(tree.no, { tree, claim })
  }
  const arborist = Object.values(state.flags).filter((flag) => flag.kind === 'arborist')
  return {
    state,
    ground,
    species: state.rounds[state.workRoundId ?? '']?.species,
    held,
    keepOuts: arborist.flatMap((flag) => {
      const tree = ground.trees.get(flag.tree)
      return tree && flag.keepOutM !== null ? [{ tree, metres: flag.keepOutM }] : []
    }),
    flagged: new Set(arborist.map((flag) => flag.tree)),
  }
}

function closedForWork(around: Around, tree: Tree, wish: Wish = {}): Refusal[] {
  const work = around.state.work[tree.no]?.state
  const keepOut = around.keepOuts.find(
    (out) =>
      out.tree.no !== tree.no && isWithin(metresApart(around.ground, tree, out.tree), out.metres)
  )
  return found([
    tree.life !== 'standing' && { code: 'tree_not_standing' },
    around.species?.includes(tree.species) === false && { code: 'tree_not_in_round' },
    // Brush is carried away from trees that are done.
    work === 'done' && wish.kind !== 'brush' && { code: 'tree_done' },
    work === 'left_out' && { code: 'tree_left_out' },
    around.flagged.has(tree.no) && { code: 'arborist_flag' },
    keepOut && { code: 'inside_keep_out', detail: { tree: keepOut.tree.no } },
  ])
}

function takenByOthers({ day, tree, mine }: Asked): Refusal[] {
  const held = day.held.get(tree.no)
  const dealt = day.state.deals[tree.no]
  return found([
    held && { code: 'tree_held', detail: { tree: tree.no, person: holderOf(held.claim) } },
    dealt && !mine && { code: 'dealt_to_another', detail: { people: dealt } },
  ])
}

function offToday({ day, tree, wish, mine }: Asked): Refusal[] {
  const stop = Object.entries(day.state.stops).find(
    ([, { block, resumed }]) => block === tree.block && !resumed
  )
  const overhead = (wish.kind ?? 'prune') === 'prune' && (wish.ladder === true || tree.asksSaw)
  const near = mine ? undefined : overheadNextTo(day, tree, overhead)
  return found([
    stop && { code: 'stopped', detail: { stop: stop[0] } },
    !mine && hasFlag(day.state, tree.no, 'disease') && { code: 'disease_not_dealt' },
    near && { code: 'works_next_to_it', detail: { tree: near.no } },
  ])
}

/** A held neighbour, where ladder or saw work goes on at either tree; not one that these people hold. */
function overheadNextTo(
  around: Around,
  tree: Tree,
  bringsOverhead: boolean,
  holders: readonly string[] = []
): Tree | undefined {
  const apartM = around.state.orchard.houseRules.overhead_apart_m ?? 0
  for (const { tree: other, claim } of around.held.values()) {
    if (holders.includes(holderOf(claim) ?? '')) continue
    const overhead = bringsOverhead || claim.ladder || other.asksSaw
    if (overhead && areNeighbours(around.ground, tree, other, apartM)) return other
  }
  return undefined
}

function forPruning({ day, tree, personId, wish }: Asked): Refusal[] {
  const { state, weather } = day
  const reason = weather.offs(tree.species)
  const helpers = wish.helpers ?? []
  const ladder = wish.ladder === true
  const alone = helpers.length === 0 && (wish.buddy ?? null) === null
  const ladderOff = ladder && (weather.laddersOff ?? false)
  const lacks = (skill: Skill) => lacksSkill(state, personId, skill, wish.today)
  const crew = [personId, ...helpers]
  const isLead = ['lead', 'manager'].includes(state.people[personId]?.role ?? '')
  return found([
    reason && { code: 'species_off', detail: { species: tree.species, reason } },
    ladder && tree.heightCm === null && { code: 'height_unknown' },
    ladderOff && { code: 'ladders_off', detail: { reason: ladderOff } },
    ladder && lacks('ladder') && { code: 'skill_missing', detail: { skill: 'ladder' } },
    ladder && !hasTool(state, crew, 'ladder') && { code: 'no_ladder_in_hand' },
    tree.asksSaw && lacks('hand_saw') && { code: 'skill_missing', detail: { skill: 'hand_saw' } },
    tree.asksSaw && !hasTool(state, crew, 'saw') && { code: 'no_saw_in_hand' },
    (ladder || tree.asksSaw) && alone && { code: 'two_people_needed' },
    ...buddyLacks(state, personId, wish.buddy ?? null),
    !isLead && !state.marked[tree.no] && lacks('prunes_alone') && { code: 'not_marked' },
    ...(ladder || tree.asksSaw || asksLadder(state, tree) ? minorsIn(state, personId, wish) : []),
  ])
}

/** A volunteer hears of those they bring along only that they are not ready, not their age. */
function minorsIn(
  state: State,
  personId: string,
  { helpers = [], learners = [] }: Wish
): Refusal[] {
  const minors = [personId, ...helpers, ...learners].filter((id) => Object.hasOwn(state.minors, id))
  const isTold = ['lead', 'manager'].includes(state.me.role)
  if (isTold && minors.length > 0) return [{ code: 'minor_ladder_saw' }]
  return minors.map((id) =>
    id === personId
      ? { code: 'minor_ladder_saw' }
      : { code: 'helper_not_ready', detail: { person: id } }
  )
}

/** Height unknown: feet on the ground, so it does not ask. */
export function asksLadder(state: State, tree: Pick<Tree, 'heightCm'>): boolean {
  const fromCm = state.orchard.houseRules.ladder_from_cm
  return fromCm !== undefined && tree.heightCm !== null && tree.heightCm > fromCm
}

function lacksSkill(
  state: State,
  personId: string,
  skill: Skill,
  today: DateOnly | undefined
): boolean {
  if (!knowsAbout(state, personId)) return false
  const until = state.skills[personId]?.[skill]
  return until === undefined || (until !== null && today !== undefined && until < today)
}

function hasTool(state: State, people: readonly string[], kind: 'ladder' | 'saw'): boolean {
  return Object.values(state.tools).some(
    (tool) => tool.kind === kind && tool.fit && people.includes(tool.heldBy ?? '')
  )
}

function isDealtTo(state: State, treeNo: number, personId: string): boolean {
  return state.deals[treeNo]?.includes(personId) === true
}

function found(refusals: (Refusal | false | undefined | '')[]): Refusal[] {
  return refusals.filter((refusal) => refusal !== false && refusal !== undefined && refusal !== '')
}

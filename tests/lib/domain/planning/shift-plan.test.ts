import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { type PlanAsked, type PlanTree, planShift } from '@/lib/domain/planning/shift-plan'
import { mayTake, type PlanPerson, teamsOf } from '@/lib/domain/planning/shift-teams'
import { splitInOrder } from '@/lib/domain/planning/split-in-order'
import { inWalkingOrder } from '@/lib/domain/planning/walking-order'

const person = (id: string, change: Partial<PlanPerson> = {}): PlanPerson => ({
  id,
  handSaw: false,
  ladder: false,
  prunesAlone: true,
  isMinor: false,
  guardian: null,
  hasSaw: false,
  hasLadder: false,
  ...change,
})
const climber = (id: string) =>
  person(id, { handSaw: true, ladder: true, hasSaw: true, hasLadder: true })

describe('splitInOrder', () => {
  // Skiena, The Algorithm Design Manual, on the linear partition problem; the last by exact search.
  test.each([
    { lengths: [1, 2, 3, 4, 5, 6, 7, 8, 9], people: 3, longest: 17 },
    { lengths: [100, 200, 300, 400, 500, 600, 700, 800, 900], people: 3, longest: 1700 },
    { lengths: [1, 1, 1, 1, 1, 1, 1, 1, 1], people: 3, longest: 3 },
    { lengths: [20, 35, 15, 40, 25, 30, 10, 45, 20, 30], people: 4, longest: 85 },
  ])('$lengths into $people', ({ lengths, people, longest }) => {
    const takers = Array.from({ length: people }, () => ({ load: 0, people: 1 }))

    const { pieces, given } = splitInOrder(lengths, takers, 10_000)

    const sums = pieces.map(([from, to]) =>
      lengths.slice(from, to).reduce((sum, one) => sum + one, 0)
    )
    expect(Math.max(...sums)).toBe(longest)
    expect(given).toBe(lengths.length)
  })

  test('two people take twice as much in the same time, and who has much already takes less', () => {
    const even = Array.from({ length: 60 }, () => 10)
    const { pieces } = splitInOrder(
      even,
      [
        { load: 0, people: 2 },
        { load: 100, people: 1 },
      ],
      1000
    )

    expect(pieces).toEqual([
      [0, 47],
      [47, 60],
    ])
  })

  test('nobody takes more than there is time for', () => {
    expect(splitInOrder([30, 30, 30, 30], [{ load: 0, people: 1 }], 70).given).toBe(2)
    expect(splitInOrder([30], [], 70).given).toBe(0)
  })
})

describe('teamsOf', () => {
  const names = (people: readonly PlanPerson[]) =>
    teamsOf(people).teams.map((team) => team.map(({ id }) => id).join(' and '))

  test('newcomers go with the experienced', () => {
    const [ann, bo] = [person('ann'), person('bo', { prunesAlone: false })]

    expect(names([bo, ann])).toEqual(['ann and bo'])
  })

  test('a minor goes with their own adult, and with nobody else', () => {
    const kim = person('kim', { isMinor: true, prunesAlone: false, guardian: 'pat' })

    expect(names([kim, person('ann'), person('pat')])).toEqual(['pat and kim', 'ann'])
    expect(teamsOf([kim, person('ann')]).withoutAdult).toEqual([kim])
    expect(names([kim, person('ann')])).toEqual(['ann'])
  })

  test('a saw or ladder makes two, and two ladders make two teams', () => {
    const people = [climber('ann'), climber('bo'), person('cy'), person('di')]

    expect(names(people)).toEqual(['ann and di', 'bo and cy'])
  })

  test('who works together now stays together', () => {
    const people = [
      climber('ann'),
      person('bo', { prunesAlone: false }),
      climber('cy'),
      person('di'),
    ]

    expect(teamsOf(people, [['di', 'cy']]).teams.map((team) => team.map(({ id }) => id))).toEqual([
      ['cy', 'di'],
      ['ann', 'bo'],
    ])
  })

  test('newcomers without anybody go in twos', () => {
    const people = ['a', 'b', 'c'].map((id) => person(id, { prunesAlone: false }))

    expect(names(people)).toEqual(['a and b', 'c'])
  })
})

test.each([
  { who: 'alone with a ladder', team: [climber('a')], takes: false },
  { who: 'two, one with a ladder', team: [climber('a'), person('b')], takes: true },
  { who: 'with a minor', team: [climber('a'), person('b', { isMinor: true })], takes: false },
  {
    who: 'whose ladder is in the shed',
    team: [person('a', { ladder: true }), person('b')],
    takes: false,
  },
  {
    who: 'who may use it cannot prune alone, and who can may not use it',
    team: [{ ...climber('a'), prunesAlone: false }, person('b')],
    takes: false,
  },
])('a ladder tree is taken by $who: $takes', ({ team, takes }) => {
  expect(mayTake(team, { saw: false, ladder: true, marked: false })).toBe(takes)
})

type Made = {
  rows: number
  places: number
  seed: number
  teams: readonly (readonly PlanPerson[])[]
}

const someTeams = fc.array(
  fc.constantFrom(
    [person('plain')],
    [climber('a'), person('b')],
    [person('old'), person('new', { prunesAlone: false })],
    [person('n', { prunesAlone: false }), person('m', { prunesAlone: false })]
  ),
  { minLength: 1, maxLength: 6 }
)

const someOrchard = fc.record({
  rows: fc.integer({ min: 2, max: 8 }),
  places: fc.integer({ min: 3, max: 15 }),
  seed: fc.integer({ min: 0, max: 1000 }),
  teams: someTeams,
})

function treesOf({ rows, places, seed }: Made): PlanTree[] {
  return Array.from({ length: rows * places }, (_, at) => {
    const dice = (at * 7919 + seed * 104_729) % 97
    return {
      no: at + 1,
      block: 1,
      row: Math.floor(at / places) + 1,
      place: (at % places) + 1,
      minutes: 20 + (dice % 30),
      isSick: dice % 11 === 0,
      saw: dice % 23 === 0,
      ladder: dice % 17 === 0,
      marked: dice % 3 === 0,
    }
  })
}

function asked(made: Made, change: Partial<PlanAsked> = {}): PlanAsked {
  const trees = treesOf(made)
  const byPlace = new Map(trees.map((tree) => [`${tree.row}|${tree.place}`, tree.no]))
  const placed = new Map(trees.map((tree) => [tree.no, tree]))
  const around = [-1, 0, 1].flatMap((row) => [-1, 0, 1].map((place) => [row, place] as const))
  return {
    teams: made.teams,
    loads: made.teams.map(() => 0),
    from: made.teams.map(() => null),
    trees,
    minutes: 300,
    near: (no) => {
      const tree = placed.get(no)
      return around.flatMap(
        ([row, place]) =>
          byPlace.get(`${(tree?.row ?? 0) + row}|${(tree?.place ?? 0) + place}`) ?? []
      )
    },
    held: [],
    ...change,
  }
}

describe('planShift', () => {
  test('gives every tree once, or says why not; never more than there is time for', () => {
    fc.assert(
      fc.property(someOrchard, (made) => {
        const question = asked(made)
        const plan = planShift(question)

        const given = plan.teams.flatMap(({ trees }) => trees.map(({ no }) => no))
        const left = plan.left.map(({ tree }) => tree.no)
        expect([...given, ...left].toSorted((a, b) => a - b)).toEqual(
          question.trees.map(({ no }) => no)
        )
        for (const { minutes } of plan.teams) expect(minutes).toBeLessThanOrEqual(300.001)
      }),
      { numRuns: 60 }
    )
  })

  test('gives nobody a tree that they may not take, nor one beside somebody else’s saw or ladder', () => {
    fc.assert(
      fc.property(someOrchard, (made) => {
        const question = asked(made)
        const plan = planShift(question)

        const whose = new Map(
          plan.teams.flatMap(({ trees }, at) => trees.map(({ no }) => [no, at] as const))
        )
        for (const { team, trees } of plan.teams) {
          for (const tree of trees) {
            expect(mayTake(team, tree)).toBe(true)
            if (!tree.saw && !tree.ladder) continue
            const others = question.near(tree.no).map((no) => whose.get(no) ?? whose.get(tree.no))
            expect(new Set(others).size).toBe(1)
          }
        }
      }),
      { numRuns: 60 }
    )
  })

  test('healthy trees come before sick ones, and the same question has the same answer', () => {
    const question = asked({ rows: 6, places: 10, seed: 4, teams: [[person('a')], [person('b')]] })
    const plan = planShift(question)

    for (const { trees } of plan.teams) {
      const firstSick = trees.findIndex(({ isSick }) => isSick)
      if (firstSick >= 0) expect(trees.slice(firstSick).every(({ isSick }) => isSick)).toBe(true)
    }
    expect(planShift(question)).toEqual(plan)
  })

  test('whoever loses trees beside somebody’s saw gets others while there are hours', () => {
    const made = { rows: 1, places: 10, seed: 3, teams: [[person('a')]] }
    const plain = { isSick: false, saw: false, ladder: false, minutes: 30 }
    const plan = planShift(
      asked(made, {
        trees: treesOf(made).map((tree) => ({ ...tree, ...plain })),
        minutes: 60,
        held: [{ no: 1, people: ['somebody'], isOverhead: true }],
      })
    )

    expect(plan.teams[0]?.trees.map(({ no }) => no)).toEqual([3, 4])
    expect(plan.left.slice(0, 3).map(({ why }) => why)).toEqual([
      'beside_overhead',
      'beside_overhead',
      'hours',
    ])
  })

  test('teams go on where they are', () => {
    const made = { rows: 6, places: 10, seed: 5, teams: [[person('a')], [person('b')]] }
    const from = [
      { block: 1, row: 6, place: 1 },
      { block: 1, row: 1, place: 1 },
    ]
    const rowsOf = (plan: ReturnType<typeof planShift>) =>
      plan.teams.map(({ trees }) => trees.filter(({ isSick }) => !isSick)[0]?.row)

    const [first = 0, second = 0] = rowsOf(planShift(asked(made, { from, minutes: 10_000 })))

    expect(first).toBeGreaterThan(second)
  })

  test('says what nobody may take, what the hours do not reach, and what is beside somebody at work', () => {
    const made = { rows: 4, places: 10, seed: 3, teams: [[person('a')]] }
    const why = (change: Partial<PlanAsked>) =>
      new Set(planShift(asked(made, change)).left.map((one) => one.why))

    expect(why({ minutes: 10_000 })).toEqual(new Set(['skills']))
    expect(why({ minutes: 60 })).toEqual(new Set(['skills', 'hours']))
    expect(
      why({ minutes: 10_000, held: [{ no: 12, people: ['somebody'], isOverhead: true }] })
    ).toContain('beside_overhead')
  })

  test('walks no more than giving each next tree to whoever has least, and takes at most a tree longer', () => {
    const even = fc.record({
      rows: fc.integer({ min: 4, max: 10 }),
      places: fc.integer({ min: 8, max: 20 }),
      seed: fc.integer({ min: 0, max: 1000 }),
      count: fc.integer({ min: 2, max: 6 }),
    })
    const sums = { plan: 0, simple: 0 }
    fc.assert(
      fc.property(even, ({ count, ...where }) => {
        const teams = Array.from({ length: count }, (_, at) => [person(`${at}`)])
        const made = { ...where, teams }
        const plain = { isSick: false, saw: false, ladder: false }
        const trees = treesOf(made).map((tree) => ({ ...tree, ...plain }))

        const plan = planShift(asked(made, { trees, minutes: 100_000 })).teams.map(
          (one) => one.trees
        )
        const simple: PlanTree[][] = teams.map(() => [])
        for (const tree of inWalkingOrder(trees)) leastOf(simple).push(tree)

        const longestTree = Math.max(...trees.map(({ minutes }) => minutes))
        expect(onFoot(plan)).toBeLessThanOrEqual(onFoot(simple))
        expect(longest(plan)).toBeLessThanOrEqual(longest(simple) + longestTree)
        sums.plan += onFoot(plan) + longest(plan)
        sums.simple += onFoot(simple) + longest(simple)
      }),
      { numRuns: 60 }
    )
    expect(sums.plan).toBeLessThan(sums.simple)
  })
})

const minutesOf = (trees: readonly PlanTree[]) =>
  trees.reduce((sum, { minutes }) => sum + minutes, 0)

function leastOf(lists: PlanTree[][]): PlanTree[] {
  const [least] = lists.toSorted((a, b) => minutesOf(a) - minutesOf(b))
  if (!least) throw new Error('There are teams.')
  return least
}

const longest = (lists: readonly (readonly PlanTree[])[]) => Math.max(...lists.map(minutesOf))

/** Minutes of all together at 3.5 ft/s (MUTCD) between trees six by five metres apart. */
function onFoot(lists: readonly (readonly PlanTree[])[]): number {
  const metres = lists.flatMap((trees) =>
    trees.slice(1).map((tree, at) => {
      const before = trees[at] ?? tree
      return Math.hypot((tree.row - before.row) * 6, (tree.place - before.place) * 5)
    })
  )
  return metres.reduce((sum, one) => sum + one, 0) / 1.067 / 60
}

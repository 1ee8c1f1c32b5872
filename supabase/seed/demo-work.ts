/** The demo's work until now: everybody claims and finishes trees in turn, by the rules of the app. */

import { randomUUID } from 'node:crypto'

import { treeRules, type Wish } from '@/lib/events/missing'
import type { Demo } from './demo-morning'
import { seatOf, treeAt } from './demo-orchard'
import { type Worker, workers } from './demo-plan'
import { type Follower, follow } from './follow'
import { mustSend, type Seat } from './referee'
import { treeToTake } from './trees-to-take'

type Hand = { claim: string; tree: number }
type AtWork = {
  worker: Worker
  seat: Seat
  wish: Wish & { learners?: string[] }
  from: number
  hand: Hand | null
}

export async function workUntilNow(demo: Demo): Promise<void> {
  const follower = await follow(demo.lead)
  const crew = workers.map((worker) => atWork(demo, worker))
  const most = Math.max(...workers.map(({ trees }) => trees))
  for (let turn = 0; turn <= most; turn++) {
    for (const one of crew.filter(({ worker }) => turn <= worker.trees)) {
      const isLast = turn === one.worker.trees
      if (one.hand) await putDown(one, isLast && one.worker.next === 'half_done')
      if (!isLast || one.worker.next === 'holds') await take(demo, follower, one)
      if (isLast && one.worker.next === 'break') await mustSend(one.seat, 'start_break', {})
    }
  }
  await follower.catchUp()
  for (const one of crew.filter(({ worker }) => worker.next === 'free')) {
    await dealAhead(demo, follower, one)
  }
}

/** The next trees of the row are kept for whoever is free, as a lead would. */
async function dealAhead(demo: Demo, follower: Follower, { seat, from }: AtWork): Promise<void> {
  const { rules, trees } = demo.land
  const stands = rules.trees.get(from)
  const refusals = treeRules(follower.state(), rules, seat.personId)
  const free = trees.filter(
    (tree) =>
      tree.block === stands?.block && tree.row === stands.row && refusals(tree.no).length === 0
  )
  const next = free.slice(0, 5).map(({ no }) => no)
  if (next.length === 0) return
  await mustSend(demo.lead, 'deal_trees', { trees: next, to: [seat.personId] })
}

function atWork(demo: Demo, worker: Worker): AtWork {
  const { name, with: other, ladder = false } = worker
  const otherId = other && seatOf(demo.seats, other.name).personId
  return {
    worker,
    seat: seatOf(demo.seats, name),
    wish: {
      ladder,
      ...(other?.part === 'buddy' && { buddy: otherId ?? null }),
      ...(other?.part === 'helpers' && otherId && { helpers: [otherId] }),
      ...(other?.part === 'learners' && otherId && { learners: [otherId] }),
    },
    from: treeAt(demo, worker.from),
    hand: null,
  }
}

/** Leaves the person without a tree where the day's season has none for them. */
async function take(demo: Demo, follower: Follower, one: AtWork): Promise<void> {
  await follower.catchUp()
  const { personId } = one.seat
  const tree = treeToTake(demo.land, follower.state(), {
    personId,
    from: one.from,
    wish: one.wish,
  })
  if (!tree) return
  const claim = randomUUID()
  const { helpers = [], learners = [], ladder = false, buddy = null } = one.wish
  await mustSend(
    one.seat,
    'claim_tree',
    { tree: tree.no, helpers: [...helpers], learners: [...learners], ladder, buddy },
    claim
  )
  one.hand = { claim, tree: tree.no }
  one.from = tree.no
}

async function putDown(one: AtWork, isHalfDone: boolean): Promise<void> {
  const hand = one.hand
  if (!hand) return
  if (isHalfDone) {
    const note = 'Lower half is open. The top wants a second look.'
    await mustSend(one.seat, 'release_tree', { ...hand, share: 60, note })
  } else {
    await mustSend(one.seat, 'finish_tree', hand)
  }
  one.hand = null
}

/** Where people's initials go: beside their tree, on nobody's mark. */

import type { Mark } from '@/lib/domain/orchard/status'

import type { Point } from './plane'
import type { Scene } from './scene'
import { boxToPlane, type Sizes, toCanvas, type View } from './view'

export type Bubble = Point & {
  index: number
  initials: string
  tree: Point
  /** Two rings around it. */
  isCalling?: boolean
}

type BubbleView = {
  view: View
  sizes: Sizes
  markAt: (index: number) => Mark
  /** Who calls for help, by the index of their tree. */
  calling: ReadonlyMap<number, readonly string[]>
}

/** For everybody at a tree. */
export function bubblesOf(
  scene: Scene,
  people: ReadonlyMap<number, readonly string[]>,
  { view, sizes: { bubbleR, markPx }, markAt, calling }: BubbleView
): Bubble[] {
  const pointOf = (index: number) => toCanvas(view, scene.xs[index] ?? 0, scene.ys[index] ?? 0)
  const placed = placeBubbles({
    at: people,
    pointOf,
    treesNear: ({ x, y }, pixels) =>
      scene.index.within(boxToPlane(view, { minX: x, minY: y, maxX: x, maxY: y }, pixels)),
    importance: (index) => (isCalling[markAt(index)] ? 4 : 1),
    bubbleR,
    markR: markPx / 2,
  })
  return placed.map((bubble) =>
    calling.get(bubble.index)?.includes(bubble.initials) ? { ...bubble, isCalling: true } : bubble
  )
}

export type BubbleQuestion = {
  /** Index of a tree, and the initials of the people at it. */
  at: ReadonlyMap<number, readonly string[]>
  /** In canvas pixels. */
  pointOf: (index: number) => Point
  /** Indexes of the trees within so many pixels of a point. */
  treesNear: (point: Point, pixels: number) => number[]
  /** What covering its mark counts. */
  importance: (index: number) => number
  bubbleR: number
  markR: number
}

/** Marks that warn or call are covered last. */
const isCalling: Record<Mark, boolean> = {
  unpruned: false,
  in_progress: false,
  done: false,
  disease: true,
  arborist: true,
  held_by_me: true,
  dealt_to_me: true,
  dealt: false,
  closed: false,
}

/**
 * Each bubble tries places round its tree, near ones first, and takes the one where it covers
 * the least of marks and other bubbles for the least way. Far from its tree a line leads to it.
 */
export function placeBubbles(question: BubbleQuestion): Bubble[] {
  const { at, pointOf, treesNear, importance, bubbleR, markR } = question
  const placed: Bubble[] = []
  for (const [index, everybody] of at) {
    const tree = pointOf(index)
    for (const initials of everybody) {
      const costOf = ({ x, y, away }: Candidate) => {
        const near = treesNear({ x, y }, bubbleR + markR)
        const coveredOf = (other: number) =>
          overlap({ x, y }, pointOf(other), bubbleR + markR) * importance(other)
        const covered =
          total(near.map(coveredOf)) +
          total(placed.map((other) => overlap({ x, y }, other, 2 * bubbleR + 2)))
        return covered + away * 0.25
      }
      const [best] = placesRound(tree, bubbleR + markR + 1)
        .map((place) => ({ ...place, cost: costOf(place) }))
        .toSorted((a, b) => a.cost - b.cost)
      if (best) placed.push({ index, initials, x: best.x, y: best.y, tree })
    }
  }
  return placed
}

type Candidate = Point & { away: number }

const directions = Array.from({ length: 16 }, (_, turn) => -45 + turn * 22.5)
const distances = [1, 1.3, 1.7, 2.2, 2.8, 3.5]

function placesRound(tree: Point, nearest: number): Candidate[] {
  return distances.flatMap((share) =>
    directions.map((degrees) => ({
      x: tree.x + share * nearest * Math.cos((degrees * Math.PI) / 180),
      y: tree.y + share * nearest * Math.sin((degrees * Math.PI) / 180),
      away: share * nearest,
    }))
  )
}

/** How deep two discs lie in each other. */
function overlap(a: Point, b: Point, clear: number): number {
  return Math.max(0, clear - Math.hypot(a.x - b.x, a.y - b.y))
}

function total(numbers: number[]): number {
  return numbers.reduce((sum, number) => sum + number, 0)
}

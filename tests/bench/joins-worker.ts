/** Runs in a worker: ten thousand trees with clustered disease, surveyed by us and counted the plain way. */

import { moranIndex } from '@turf/moran-index'

import { besideEachOther } from '@/lib/domain/disease/beside'
import { moranOf } from '@/lib/domain/disease/moran'
import { neighboursAt } from '@/lib/domain/disease/neighbours'
import { shuffle } from '@/lib/domain/disease/shuffles'
import { survey } from '@/lib/domain/disease/survey'
import type { Tree } from '@/lib/domain/orchard/types'
import { chanceFrom } from '@/lib/util/chance'

import { aBlock, aTree } from '../lib/domain/an-orchard'

export type Timing = {
  surveyMs: number
  shuffleMs: number
  plainMs: number
  moranMs: number
  turfMs: number
}

const side = 100
const rounds = 999
const block = aBlock()

function squareOf(places: number): Tree[] {
  return Array.from({ length: places * places }, (_, at) =>
    aTree({
      no: at + 1,
      row: Math.floor(at / places) + 1,
      place: (at % places) + 1,
      species: 'apricot',
    })
  )
}

/** One in ten, most of them near one of twelve. */
function sickOf(trees: readonly Tree[]): Uint8Array {
  const chance = chanceFrom(11)
  const middles = Array.from({ length: 12 }, () => [chance() * side, chance() * side] as const)
  return Uint8Array.from(trees, ({ row, place }) => {
    const near = middles.some(([r, p]) => Math.hypot(row - r, place - p) < 5)
    return chance() < (near ? 0.6 : 0.04) ? 1 : 0
  })
}

function timed(run: () => unknown): number {
  const start = performance.now()
  run()
  return performance.now() - start
}

/** As one would write it first: all labels shuffled, all joins walked, each time. */
function plainShuffles(joins: readonly (readonly [number, number])[], sick: Uint8Array): number {
  const chance = chanceFrom(3)
  const labels = sick.slice()
  let most = 0
  for (let round = 0; round < rounds; round++) {
    for (let at = labels.length - 1; at > 0; at--) {
      const from = Math.floor(chance() * (at + 1))
      const held = labels[at] ?? 0
      labels[at] = labels[from] ?? 0
      labels[from] = held
    }
    let pairs = 0
    for (const [one, other] of joins) if (labels[one] && labels[other]) pairs++
    most = Math.max(most, pairs)
  }
  return most
}

function measure(): Timing {
  const trees = squareOf(side)
  const sick = sickOf(trees)
  const cases = trees
    .filter((_, at) => sick[at] === 1)
    .map(({ no }) => ({ no, sign: 'canker', confirmed: true }))
  const neighbours = besideEachOther(trees, [block])
  const joins = [...trees.keys()].flatMap((at) =>
    [...neighboursAt(neighbours, at)].flatMap((other) => (other > at ? [[at, other] as const] : []))
  )
  const few = squareOf(30)
  const fewValues = Array.from(few, (_, at) => (at * 7) % 5)
  const fewNeighbours = besideEachOther(few, [block])
  const features = few.map(({ row, place }, at) => ({
    type: 'Feature' as const,
    properties: { x: fewValues[at] ?? 0 },
    geometry: { type: 'Point' as const, coordinates: [place, row] },
  }))
  return {
    surveyMs: timed(() =>
      survey({
        trees,
        blocks: [block],
        cases,
        known: cases.map((one) => ({ ...one, severity: 'high' })),
        year: 2026,
        block: null,
        rings: 1,
        seed: 1,
      })
    ),
    shuffleMs: timed(() =>
      shuffle({ neighbours, sick, kinds: new Uint8Array(sick.length) }, rounds, chanceFrom(3))
    ),
    plainMs: timed(() => plainShuffles(joins, sick)),
    moranMs: timed(() => moranOf(fewNeighbours, fewValues)),
    turfMs: timed(() =>
      moranIndex(
        { type: 'FeatureCollection', features },
        { inputField: 'x', threshold: 1.5, binary: true, standardization: false }
      )
    ),
  }
}

self.onmessage = () => self.postMessage(measure())

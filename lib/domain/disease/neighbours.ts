/** Who stands next to whom, as numbers of a list: a join is two trees beside each other. */

export type Neighbours = {
  trees: number
  /** The neighbours of tree i are `others` from `starts[i]` up to `starts[i + 1]`. */
  starts: Uint32Array
  others: Uint32Array
}

export type Join = readonly [one: number, other: number]

/** Each join once, in whichever order. */
export function neighboursFrom(trees: number, joins: readonly Join[]): Neighbours {
  const starts = new Uint32Array(trees + 1)
  for (const [one, other] of joins) {
    starts[one + 1] = (starts[one + 1] ?? 0) + 1
    starts[other + 1] = (starts[other + 1] ?? 0) + 1
  }
  for (let at = 0; at < trees; at++) starts[at + 1] = (starts[at + 1] ?? 0) + (starts[at] ?? 0)

  const others = new Uint32Array(2 * joins.length)
  const next = starts.slice()
  const put = (at: number, other: number) => {
    const place = next[at] ?? 0
    others[place] = other
    next[at] = place + 1
  }
  for (const [one, other] of joins) {
    put(one, other)
    put(other, one)
  }
  return { trees, starts, others }
}

export function countNeighbours({ starts }: Neighbours, at: number): number {
  return (starts[at + 1] ?? 0) - (starts[at] ?? 0)
}

export function neighboursAt({ starts, others }: Neighbours, at: number): Uint32Array {
  return others.subarray(starts[at], starts[at + 1])
}

export function countJoins({ others }: Neighbours): number {
  return others.length / 2
}

/** Pairs of joins that share a tree. */
export function countJoinPairs(neighbours: Neighbours): number {
  let pairs = 0
  for (let at = 0; at < neighbours.trees; at++) {
    const own = countNeighbours(neighbours, at)
    pairs += (own * (own - 1)) / 2
  }
  return pairs
}

/** Only these trees, numbered anew in the order given; a join to any other is gone. */
export function neighboursAmong(neighbours: Neighbours, kept: readonly number[]): Neighbours {
  const newNo = new Map(kept.map((at, no) => [at, no]))
  const joins = kept.flatMap((at, no) =>
    [...neighboursAt(neighbours, at)].flatMap((other): Join[] => {
      const otherNo = newNo.get(other)
      return otherNo !== undefined && otherNo > no ? [[no, otherNo]] : []
    })
  )
  return neighboursFrom(kept.length, joins)
}

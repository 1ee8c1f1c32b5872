/**
 * Things in a row, cut into consecutive pieces so that the longest piece is as short as can be (the linear partition
 * problem; Skiena, The Algorithm Design Manual): whoever takes consecutive trees walks little.
 */

/** Whoever takes a piece: how much they have already, and how fast they are compared with one person. */
export type Taker = { load: number; people: number }

/** For each taker its piece as [from, to), and how many could be given at all when nobody takes more than `most`. */
export type Split = { pieces: readonly (readonly [number, number])[]; given: number }

/** Halving so often comes to within a second of the best in a day. */
const halvings = 16

export function splitInOrder(
  lengths: readonly number[],
  takers: readonly Taker[],
  most: number
): Split {
  const atMost = filled(lengths, takers, most)
  if (atMost.given < lengths.length) return atMost
  let [tooShort, enough] = [0, most]
  let best = atMost
  for (let turn = 0; turn < halvings; turn++) {
    const middle = (tooShort + enough) / 2
    const tried = filled(lengths, takers, middle)
    if (tried.given < lengths.length) tooShort = middle
    else {
      enough = middle
      best = tried
    }
  }
  return best
}

/** One after the other, each until the next thing would be too much. */
function filled(lengths: readonly number[], takers: readonly Taker[], most: number): Split {
  let at = 0
  const pieces = takers.map(({ load, people }): [number, number] => {
    const from = at
    let sum = load
    // A rounding error is no minute too many.
    while (at < lengths.length && sum + (lengths[at] ?? 0) / people <= most + 1e-6) {
      sum += (lengths[at] ?? 0) / people
      at++
    }
    return [from, at]
  })
  return { pieces, given: at }
}

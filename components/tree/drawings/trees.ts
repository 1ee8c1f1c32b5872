/** Two trees to draw on: a bowl and one with a leader, from the side; and a bowl from above. */

import { along, type Limb, limb, type Point } from './limb'

/** The trunk ends in a fork from which the main limbs stand out. */
export function bowl(foot: Point) {
  const trunk = limb(foot, { angle: 0, length: 62, width: [34, 24] })
  const fork = { x: trunk.to.x, y: trunk.to.y + 8 }
  const back = [-20, 22].map((angle) =>
    limb(fork, { angle, length: 104, turn: angle * 0.5, width: [14, 3] })
  )
  const front = [-52, 52].map((angle) =>
    limb(fork, { angle, length: 122, turn: -angle * 0.55, width: [18, 3] })
  )
  return { trunk, fork, back, front, side: front.flatMap(sideBranches) }
}

function sideBranches(main: Limb): Limb[] {
  return [0.42, 0.62, 0.8].map((share, at) => {
    const foot = along(main, share)
    const out = Math.sign(main.to.x - main.from.x)
    return limb(foot, {
      angle: foot.angle + out * (at % 2 === 0 ? 42 : -34),
      length: 42 - at * 6,
      turn: -out * (at % 2 === 0 ? 36 : -16),
      width: [6, 2],
    })
  })
}

/** One stem goes on upward, with branches in tiers. */
export function withLeader(foot: Point) {
  const trunk = limb(foot, { angle: 0, length: 168, width: [30, 5] })
  const tiers = [0.3, 0.42, 0.56, 0.7, 0.82].flatMap((share, at) => {
    const start = along(trunk, share)
    const length = 78 - at * 12
    return [-1, 1].map((side) =>
      limb(
        { x: start.x, y: start.y + side * 4 },
        { angle: side * 66, length, turn: -side * 22, width: [11 - at * 1.4, 2.4] }
      )
    )
  })
  return { trunk, tiers }
}

/** Five main limbs like the spokes of a wheel. */
export function fromAbove(middle: Point) {
  return [0, 68, 138, 222, 290].map((angle) =>
    limb(middle, { angle, length: 62, turn: 8, width: [17, 3] })
  )
}

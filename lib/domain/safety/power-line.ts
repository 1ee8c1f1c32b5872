/**
 * How near an overhead line people, tools, ladders and wood may come. 29 CFR 1910.269(x), the definition of
 * line-clearance tree trimming: 10 ft (3.05 m) up to 50 kV to ground, and 4 in (0.10 m) more for every 10 kV
 * above. The text does not say whether a part of a step counts: here it does, as a whole one. Its two systems
 * of units differ by millimetres: the larger counts. The voltage is the line's name, which is on the cautious side.
 */

const metresPerFoot = 0.3048

const plain = { upToKv: 50, feet: 10, metres: 3.05 }
const step = { kv: 10, feet: 4 / 12, metres: 0.1 }

export function lineLimitFt(kv: number): number {
  return plain.feet + stepsAbove(kv) * step.feet
}

export function lineLimitM(kv: number): number {
  return Math.max(plain.metres + stepsAbove(kv) * step.metres, lineLimitFt(kv) * metresPerFoot)
}

function stepsAbove(kv: number): number {
  return Math.max(0, Math.ceil((kv - plain.upToKv) / step.kv))
}

export type NearLine = {
  /** From the line to the nearest wood of the tree, judged from the ground: nobody measures at a line. */
  toTreeM: number
  ladderM: number
  toolM: number
  /** The longest branch that may fall or swing. */
  branchM: number
}

/** What is left of the distance when a ladder tips with the tool on top, or a branch swings. Common practice. */
export function freeOfLineM({ toTreeM, ladderM, toolM, branchM }: NearLine): number {
  return toTreeM - Math.max(ladderM + toolM, branchM)
}

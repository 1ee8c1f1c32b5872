import type { Range } from './minutes-per-tree'

/** Between what the middle eight of ten lie. */
export function middleOf(values: readonly number[]): Range {
  const inOrder = values.toSorted((a, b) => a - b)
  const at = (share: number) => inOrder[Math.round((inOrder.length - 1) * share)] ?? 0
  return { from: at(0.1), to: at(0.9) }
}

/** How many trees a spacing puts on the ground, were the ground without edges. */

export type Spacing = { rowSpacingM: number; treeSpacingM: number }

/** The international acre: 43,560 square feet of 0.3048 m. */
export const acreM2 = 4046.8564224
export const hectareM2 = 10_000

export function treesPerHectare({ rowSpacingM, treeSpacingM }: Spacing): number {
  return hectareM2 / (rowSpacingM * treeSpacingM)
}

export function treesPerAcre({ rowSpacingM, treeSpacingM }: Spacing): number {
  return acreM2 / (rowSpacingM * treeSpacingM)
}

/** Square and hexagonal follow from one distance, the other two from two. In offset rows each tree stands beside a gap. */
export const patterns = ['rectangular', 'square', 'offset', 'hexagonal'] as const
export type Pattern = (typeof patterns)[number]

/** In a hexagonal block every tree has its six neighbours at the same distance. */
const hexagonalRow = Math.sqrt(3) / 2

/** What the rows then stand apart; a pattern of one distance takes no other. */
export function spacingIn(pattern: Pattern, { rowSpacingM, treeSpacingM }: Spacing): Spacing {
  switch (pattern) {
    case 'rectangular':
    case 'offset':
      return { rowSpacingM, treeSpacingM }
    case 'square':
      return { rowSpacingM: treeSpacingM, treeSpacingM }
    case 'hexagonal':
      return { rowSpacingM: treeSpacingM * hexagonalRow, treeSpacingM }
  }
}

/** By how much of the tree spacing every other row is moved along. */
export function shiftIn(pattern: Pattern): number {
  return pattern === 'offset' || pattern === 'hexagonal' ? 0.5 : 0
}

/** Figures and how they are printed. */

export type Figure = { what: string; value: string; target: string; met: boolean | null }

export function share(values: readonly number[], part: number): number {
  const inOrder = values.toSorted((a, b) => a - b)
  return inOrder[Math.min(inOrder.length - 1, Math.floor(inOrder.length * part))] ?? Number.NaN
}

export const ms = (value: number): string => `${value.toFixed(value < 10 ? 2 : 0)} ms`
export const kB = (bytes: number): string => `${(bytes / 1000).toFixed(1)} kB`
export const MB = (bytes: number): string => `${(bytes / 1e6).toFixed(0)} MB`

/** A figure with a most that it should stay under. */
export function atMost(
  what: string,
  value: number,
  most: number,
  unit: (value: number) => string
): Figure {
  return { what, value: unit(value), target: `≤ ${unit(most)}`, met: value <= most }
}

export function atLeast(
  what: string,
  value: number,
  least: number,
  unit: (value: number) => string
): Figure {
  return { what, value: unit(value), target: `≥ ${unit(least)}`, met: value >= least }
}

export function noted(what: string, value: string): Figure {
  return { what, value, target: '', met: null }
}

export function print(title: string, figures: readonly Figure[]): void {
  console.log(`\n${title}`)
  console.table(
    figures.map(({ what, value, target, met }) => ({
      what,
      value,
      target,
      met: met === null ? '' : met ? 'yes' : 'NO',
    }))
  )
}

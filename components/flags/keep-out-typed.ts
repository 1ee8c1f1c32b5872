/** A keep-out as it is typed, in the orchard's unit. */

const metresPerFoot = 0.3048
export const mostM = 200

export type Units = 'metric' | 'us'

/** In metres, rounded up to a decimetre, to the cautious side. Null: not a distance one can set. */
export function metresTyped(typed: string, units: Units): number | null {
  const number = Number(typed.trim().replace(',', '.'))
  if (typed.trim() === '' || !Number.isFinite(number)) return null
  const metres = Math.ceil((units === 'us' ? number * metresPerFoot : number) * 10 - 1e-6) / 10 + 0
  return metres >= 0 && metres <= mostM ? metres : null
}

/** As one would type it. */
export function asTyped(metres: number, units: Units): string {
  const number = units === 'us' ? Math.ceil(metres / metresPerFoot - 1e-6) : metres
  return String(number)
}

import { sides } from '../tree/reason-words'

/** The nearest of eight sides. */
export function sideOf(bearingDeg: number): (typeof sides)[number] {
  return sides[Math.round(bearingDeg / 45) % sides.length] ?? 'n'
}

/** Inches and feet as a tape has them. What comes from a metric rule is rounded by who asks, to the safe side. */

export type Rounding = 'up' | 'near' | 'down'

const rounds = { up: Math.ceil, near: Math.round, down: Math.floor }
/** The two systems of one rule differ by so much, in inches: 3.05 m are 10 ft. */
const sameRuleIn = 0.1

/** "3 7/8", "1/2", "4": in parts of a power of two, the fraction in its lowest terms. */
export function fractionOf(inches: number, parts: number, rounding: Rounding): string {
  // What is exact stays, although it is no binary fraction.
  const all = rounds[rounding](Number((inches * parts).toFixed(4)))
  const [whole, rest] = [Math.floor(all / parts), all % parts]
  if (rest === 0) return String(whole)
  const shared = rest & -rest
  const fraction = `${rest / shared}/${parts / shared}`
  // A line never breaks between the two: 3 7/8 must not be read as 3.
  return whole === 0 ? fraction : `${whole}\u00a0${fraction}`
}

/** "10 ft 8 in", "10 ft". */
export function feetAndInches(inches: number, rounding: Rounding): string {
  const near = Math.round(inches)
  const all = Math.abs(inches - near) <= sameRuleIn ? near : rounds[rounding](inches)
  const [feet, rest] = [Math.floor(all / 12), all % 12]
  if (feet === 0) return `${rest} in`
  return rest === 0 ? `${feet} ft` : `${feet} ft ${rest} in`
}

/** Gloves tap twice where one tap was meant. */

/** Shorter than anybody looks at what a tap has opened. */
const longestDoubleTapMs = 300

/** Says of each tap, at its time in ms, whether it was meant: not when it follows another at once. */
export function guardDoubleTap(): (at: number) => boolean {
  let last = Number.NEGATIVE_INFINITY
  return (at) => {
    const isMeant = at - last > longestDoubleTapMs
    last = at
    return isMeant
  }
}

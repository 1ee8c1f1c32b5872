/** How much of the time that people are here, breaks taken out, they are at a tree: the rest is walking, tools, talk. */

export type ShareAtTrees = { share: number; spread: number }

/** Before anything was seen, and how many hours of one person that guess is worth. Common practice, no source. */
const guess = { share: 0.7, hours: 4 }
/** From one hour of one person to the next. Common practice, no source. */
const spreadOfAnHour = 0.3

export function shareAtTrees(atTreesMinutes: number, hereMinutes: number): ShareAtTrees {
  const hours = hereMinutes / 60 + guess.hours
  const share = (atTreesMinutes / 60 + guess.share * guess.hours) / hours
  return { share: Math.min(1, share), spread: spreadOfAnHour / Math.sqrt(hours) }
}

/**
 * Ten minutes in two hours: the least cool-down in high heat (California, Title 8 section 3395(e)(6)), taken as
 * what a crew rests on any day.
 */
const restGuess = { share: 10 / 120, hours: 4 }

/** Of the time that people are here, what will be breaks: as so far, and as is usual where little was seen. */
export function shareOfBreaks(breakMinutes: number, hereMinutes: number): number {
  const hours = hereMinutes / 60 + restGuess.hours
  return Math.min(0.5, (breakMinutes / 60 + restGuess.share * restGuess.hours) / hours)
}

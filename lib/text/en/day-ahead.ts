/** How many more trees by the end, when all are done, and what that rests on. */

import { plural } from './plural'

/** "about 3 to 5 more days", or "about 3 more days" where that is all it can be. */
const about = (from: number, to: number, unit: (count: number) => string) =>
  from === to ? `about ${unit(to)}` : `about ${from} to ${unit(to)}`
const moreTrees = (count: number) => plural(count, '1 more tree', `${count} more trees`)
const moreDays = (count: number) => plural(count, '1 more day', `${count} more days`)
const hours = (count: number) => plural(count, '1 hour', `${count} hours`)

export const dayAhead = {
  title: 'The rest of the day',
  more: (from: number, to: number, clock: string) =>
    to === 0
      ? `No more trees are likely to be finished by ${clock}.`
      : `A${about(from, to, moreTrees).slice(1)} by ${clock} at today’s pace.`,
  allToday: (left: number, from: string, to: string) =>
    plural(
      left,
      `The one tree that is left would be done between ${from} and ${to}.`,
      `All ${left} trees that are left would be done between ${from} and ${to}.`
    ),
  maybeToday: (left: number, days: number) => {
    const more = plural(days, 'one more day', `up to ${days} more days`)
    return plural(
      left,
      `The one tree that is left may just be done today, or take ${more} like this.`,
      `All ${left} trees that are left may just be done today, or take ${more} like this.`
    )
  },
  moreDays: (left: number, from: number, to: number) =>
    plural(
      left,
      `The one tree that is left takes ${about(from, to, moreDays)} like this.`,
      `All ${left} trees that are left take ${about(from, to, moreDays)} like this.`
    ),
  often: 'Eight times out of ten it comes out within this.',
  notEnough: (done: number, needed: number) =>
    `Too early to say how far you get: ${done} of the ${needed} finished trees that it takes.`,
  nobody: 'Nobody prunes now, so there is no pace to go by.',
  noneLeft: 'Nothing is left that somebody here may prune.',
  stopped: 'Work is stopped. How far you will get is shown again when it goes on.',
  over: 'The time of this shift is over.',

  behind: 'What this rests on',
  people: (count: number) =>
    plural(count, '1 person prunes or is ready to', `${count} people prune or are ready to`),
  endsByShift: (clock: string) => `Until the shift ends at ${clock}, with breaks as so far`,
  endsByLight: (clock: string) => `Until the sun sets at ${clock}, before the shift ends`,
  share: (share: string) => `${share} of the time is at trees; the rest is walking, tools and talk`,
  trees: (count: number) =>
    plural(
      count,
      '1 finished tree, without breaks, stops and lessons',
      `${count} finished trees, without breaks, stops and lessons`
    ),
  strays: 'A time far out of line, such as a phone in a pocket overnight, is trimmed.',
  usual:
    'Where little is seen yet: 34 minutes for a mature standard apple tree (New Hampshire, Bulletin 257, 1931), and 1.75 times that for newcomers (common practice).',
  closed: (count: number) =>
    plural(count, '1 closed tree is not counted', `${count} closed trees are not counted`),
  off: (count: number) =>
    plural(
      count,
      '1 tree is off today and not counted',
      `${count} trees are off today and not counted`
    ),
  beyond: (count: number) =>
    plural(
      count,
      '1 tree asks for a saw or ladder that nobody here may use',
      `${count} trees ask for a saw or ladder that nobody here may use`
    ),
  table: 'Minutes of one person per tree',
  kind: 'Trees',
  minutes: 'Minutes',
  finished: 'Finished',
  minutesWords: (middle: number, from: number, to: number) => `${middle} (${from} to ${to})`,

  hoursLeft: (from: number, to: number) => `Work left: ${about(from, to, hours)} of one person.`,
  blockToday: (from: string, to: string) =>
    `With who is there now: done between ${from} and ${to}.`,
  blockDays: (from: number, to: number) =>
    `With who is there now: ${about(from, to, moreDays)} like this.`,
  blockMaybe: (from: string) =>
    `With who is there now: at ${from} at the earliest, perhaps not today.`,
}

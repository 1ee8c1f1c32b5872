/** The head count: in a stop, and whenever a lead counts. */

import { plural } from './plural'

export const count = {
  title: 'Head count',
  ofAll: (all: number) => `of ${all} are counted`,
  seeNote: 'Mark whom you see with your own eyes, not the phone.',
  missing: 'Not counted yet',
  found: 'Counted',
  undoNote: 'Tap again to undo.',
  seen: 'Seen by me',
  seenPerson: (name: string) => `Seen by me: ${name}`,
  notSeen: (name: string) => `Not seen after all: ${name}`,
  call: 'Call',
  callPerson: (name: string) => `Call ${name}`,
  byPhone: 'answered on the phone',
  seenBy: (name: string) => `seen by ${name}`,
  lastAt: 'last at',
  noTree: 'no tree in this shift',
  onBreak: 'on a break',
  where: 'Where they were last',

  stopped: 'Work is stopped',
  stoppedIn: (block: string) => `Work is stopped in ${block}`,
  by: (name: string, time: string) => `Called by ${name} at ${time}. The signal is:`,
  stopAll: 'Stop the whole orchard',
  resumeWhy: 'Everybody is counted. Each answers again before the next tree.',
  resumeWaits: (count: number) =>
    plural(
      count,
      '1 person is not counted. Find them first.',
      `${count} people are not counted. Find them first.`
    ),
  resume: 'Let work go on',

  countNow: 'Count now',
  countNowNote: 'For lunch, for dusk, whenever in doubt. It stays on this device.',
  here: (count: number) =>
    plural(count, '1 person is on the site', `${count} people are on the site`),
  kinds: {
    atWork: (count: number) => `${count} at a tree`,
    free: (count: number) => `${count} without a tree`,
    onBreak: (count: number) => `${count} on a break`,
    visitors: (count: number) => plural(count, '1 visitor', `${count} visitors`),
    minors: (count: number) => plural(count, '1 under age', `${count} under age`),
    noPhone: (count: number) => `${count} without a phone`,
  },
  nobody: 'Nobody is counted in.',
  since: (time: string) => `Count begun at ${time}`,
  all: 'Everybody is counted.',
  some: (count: number) =>
    plural(
      count,
      '1 person is not seen. Call them, then look where they were.',
      `${count} people are not seen. Call them, then look where they were.`
    ),
  lookFor: 'Call everybody to look',
  finish: 'End the count',
  last: (time: string, seen: number, all: number) => `Last count, ${time}: ${seen} of ${all}.`,

  notFound: (name: string) => `${name} was not found when the shift closed.`,
  notFoundNote: 'Looking goes on until somebody has seen them.',
  isFound: 'Found',
  isFoundPerson: (name: string) => `${name} is found`,
}

/** The day so far, for the manager: counts per block, what is flagged, who is here. */

import { plural } from './plural'

export const board = {
  title: 'The day so far',
  headline: (done: number, all: number, inProgress: number) =>
    `${done} of ${all} trees done, ${inProgress} in progress`,
  noRound: 'No round is open',
  noRoundNote: 'Open one on the shift screen. Then trees are counted here.',
  doneOf: (done: number, trees: string) => `${done} of ${trees}`,
  peopleAt: (people: string) => `${people} at its trees`,
  bar: (parts: string) => `Trees: ${parts}`,
  part: (count: number, status: string) => `${count} ${status}`,
  counted: {
    done: (_: number) => 'done',
    inProgress: (_: number) => 'in progress',
    begun: (_: number) => 'half done',
    left: (_: number) => 'left to do',
    disease: (_: number) => 'flagged for disease',
    arborist: (_: number) => 'flagged for a licensed arborist',
  },
  nothingYet: 'No tree is done yet. Numbers come as the crew works.',
  noShift: 'No shift is open. These are the numbers of the round.',
  pictureOf: (block: string) => `${block}, seen from above, each tree with its status`,
  hazards: 'For the licensed arborist',
  diseases: 'Disease',
  nothingFlagged: 'Nothing is flagged.',
  seenAt: (when: string, name: string) => `${when}, ${name}`,
  here: 'On site',
  nobodyHere: 'Nobody is counted in.',
  openMap: 'Open the map',
  toShift: 'Open a round',
  others: (count: number) => plural(count, 'and 1 more', `and ${count} more`),
}

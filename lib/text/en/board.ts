/** The day so far, for the manager: counts per block. */

export const board = {
  title: 'The day so far',
  doneOf: (done: number, all: number) => `${done} of ${all} trees`,
  doneTotal: (share: string) => `${share} done`,
  perBlock: 'Block by block',
  people: (people: string) => `${people} here`,
  bar: (parts: string) => `Trees: ${parts}`,
  part: (count: number, status: string) => `${count} ${status}`,
  nothingYet: 'No tree is done yet. Numbers come as the crew works.',
  noShift: 'No shift is open. These are the numbers of the round.',
  hazards: 'For the licensed arborist',
  diseases: 'Disease',
  noHazards: 'Nothing flagged.',
  seenAt: (time: string, name: string) => `${time}, ${name}`,
  openMap: 'Open the map',
}

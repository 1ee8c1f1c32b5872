/** One line for everybody at the trees: what is off now, and when to rest and drink. */

export const conditions = {
  off: (list: string) => `Off now: ${list}.`,
  offBecause: (what: string, why: string) => `${what} (${why})`,
  ladders: 'ladders',
  mine: 'Your tree is off now. Make no more cuts; put it down as half done, or ask your lead.',
  light: (left: string, set: string) => `${left} of daylight left, until ${set}.`,
  sunrise: (time: string) => `The sun rises at ${time}.`,
  byLamps: 'Your lead lets work go on under lamps: feet on the ground, no ladders.',
  offLadder: 'Come off the ladder: the light is going.',
  lastCut: 'Begin your last cut. What is not done stays half done.',
  comeIn: 'Make no more cuts. Put it down as half done, and walk out of the rows.',
  excepted: (list: string) => `Your lead lets ${list} be pruned all the same.`,
  cup: (time: string) => `Drink a cup at ${time}.`,
  restNow: 'Rest in the shade now, ten minutes.',
  restAt: (time: string) => `Rest in the shade at ${time}, ten minutes.`,
  unknown: 'Nobody has written down the weather lately. Your lead looks and decides.',
}

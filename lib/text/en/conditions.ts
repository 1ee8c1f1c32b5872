/** One line for everybody at the trees: what is off now, and when to rest and drink. */

export const conditions = {
  off: (list: string) => `Off now: ${list}.`,
  offBecause: (what: string, why: string) => `${what} (${why})`,
  ladders: 'ladders',
  mine: 'Your tree is off now. Make no more cuts; put it down as half done, or ask your lead.',
  excepted: (list: string) => `Your lead lets ${list} be pruned all the same.`,
  cup: (time: string) => `Drink a cup at ${time}.`,
  restNow: 'Rest in the shade now, ten minutes.',
  restAt: (time: string) => `Rest in the shade at ${time}, ten minutes.`,
  unknown: 'Nobody wrote down the weather lately. Your lead looks and decides.',
}

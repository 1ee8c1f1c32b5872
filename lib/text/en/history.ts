/** What became of a tree over its rounds, and one's own hours. */

import { plural } from './plural'

export const history = {
  title: 'What became of this tree',
  show: 'Its history',
  all: 'All rounds, and print',
  whoDidWhat: 'Who did what here',
  back: 'Back to the tree',
  print: 'Print',
  asCsv: 'As CSV',
  file: 'tree-history',
  fileHeads: ['Season', 'Round', 'When', 'What', 'More', 'Note'],
  kinds: {
    winter: 'Winter',
    summer: 'Summer',
    after_harvest: 'After harvest',
    training: 'Training',
  },
  round: (kind: string, season: number) => `${kind} ${season}`,
  between: 'Between rounds',
  states: {
    unpruned: 'not pruned',
    begun: 'half done',
    done: 'done',
    left_out: 'not in this round',
  },
  nothing: 'Nothing has happened here yet.',
  nothingInRound: 'Nobody has worked here in this round.',
  done: (who: string) => `Finished by ${who}`,
  begun: (who: string, share: string) => `Left ${share} done by ${who}`,
  alsoWorked: (who: string) => `Also worked on by ${who}`,
  with: (names: string) => `with ${names}`,
  took: (duration: string) => `took ${duration}`,
  late: 'came in late',
  paper: 'from paper',
  passed: (who: string) => `Looked over and passed by ${who}`,
  reopened: (who: string, reason: string) => `Reopened by ${who}: ${reason}`,
  mark: (who: string) => `Big cuts marked by ${who}`,
  markOver: 'the mark has since gone',
  flag: (sign: string, who: string) => `${sign}: flagged by ${who}`,
  flagStates: {
    suspected: 'nobody has looked at it yet',
    confirmed: 'confirmed',
    open: 'open, for a licensed arborist',
    withdrawn: 'withdrawn',
    cleared: 'cleared',
  },
  confirmedBy: (who: string) => `confirmed by ${who}`,
  withdrawnBy: (who: string, day: string) => `withdrawn by ${who} on ${day}`,
  clearedBy: (who: string, day: string) => `cleared by ${who} on ${day}`,
  doneBy: (who: string, day: string) => `work done by ${who} on ${day}`,
  photo: (who: string) => `Photo by ${who}`,
  showPhoto: 'Show the photo',
  photoAlt: (day: string) => `The tree on ${day}`,
}

export const myHours = {
  title: 'Your hours',
  season: (season: number) => `Season ${season}`,
  total: (hours: string, shifts: number) =>
    plural(shifts, `${hours} in 1 shift`, `${hours} in ${shifts} shifts`),
  note: 'From counting in to counting out, less breaks. If an hour is wrong, tell your lead.',
  none: 'No hours yet. They begin when you are counted in.',
}

/** The next tree: name, way, reason, and the claim confirmed in words. */

import { plural } from './plural'

export const nextTree = {
  title: 'Your next tree',
  otherTree: 'Other tree',
  other: 'Other',
  claim: 'Claim this tree',
  claimTag: (tag: string) => `Claim ${tag}`,
  askingFor: (tag: string) => `Asking for ${tag}…`,
  askingKept: 'Kept. You are told when the answer is here.',

  dealtBy: (name: string) => `${name} dealt it to you`,
  dealt: 'Dealt to you',
  sameRow: 'Next in the row you are in',
  nearest: 'The nearest tree you may take',
  oneOfDeals: (count: number) =>
    plural(count, '1 tree dealt to you', `${count} trees dealt to you`),
  begun: 'Begun before, the rest is left to do',
  diseaseThere: 'Flagged for disease: clean your tools after it',
  needsTwo: 'Two people: ladder or saw',

  paces: (count: number) => plural(count, 'one pace', `${count} paces`),
  way: (distance: string, paces: string) => `${distance}, about ${paces}`,
  noWay: 'No measured position. Count the trees from the tagged end.',
  upRow: (row: number) => `Up row ${row}, away from the tagged end`,
  downRow: (row: number) => `Down row ${row}, towards the tagged end`,
  crossTo: (row: number) => `Across to row ${row}`,
  alongRow: (row: number, trees: number) =>
    plural(trees, `Along row ${row}, one tree`, `Along row ${row}, ${trees} trees`),
  onYourLeft: 'on your left',
  onYourRight: 'on your right',
  youAreHere: 'You are here',

  confirmTitle: 'Look at the tree. Is it this one?',
  rowAndPlace: (row: number, place: string) => `Row ${row}, ${place} from the tagged end.`,
  standsBetween: (tree: string, others: string) => `${tree}, between two ${others}.`,
  standsBetweenTwo: (tree: string, before: string, after: string) =>
    `${tree}, between ${before} and ${after}.`,
  standsNextTo: (tree: string, other: string) => `${tree}, next to ${other}.`,
  standsAlone: (tree: string) => `${tree}.`,
  isIt: 'Is it?',
  yesClaim: 'Yes, claim it',
  notThisOne: 'No, another tree',
  withWhom: 'Who works with you?',
  alone: 'Alone',

  wasFirst: (name: string, tag: string) => `${name} was first. Take ${tag}.`,
  noneLeft: 'No tree is left for you right now',
  noneLeftWhy: 'Help a neighbour, or ask your lead.',
  noneBecause: 'What stands in the way',
  haulBrush: 'Haul brush in this row',
}

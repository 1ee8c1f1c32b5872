/** The next tree: name, way, reason, and the claim confirmed in words. */

import { plural } from './plural'

export const nextTree = {
  title: 'Your next tree',
  otherTree: 'Other tree',
  other: 'Other',
  claim: 'Claim this tree',
  claimTag: (tag: string) => `Claim ${tag}`,
  askingFor: (tag: string) => `Asking for ${tag}…`,

  dealtBy: (name: string) => `${name} dealt it to you`,
  dealt: 'Dealt to you',
  sameRow: 'Next in the row you are in',
  nearest: 'The nearest tree you may take',
  begun: 'Begun before, the rest is left to do',
  diseaseThere: 'Flagged for disease: clean your tools after it',
  needsTwo: 'Two people: ladder or saw',

  paces: (count: number) => plural(count, 'one pace', `${count} paces`),
  way: (distance: string, paces: string) => `${distance}, ${paces}`,
  wayFor: (distance: string, paces: string, minutes: string) =>
    `${distance}, ${paces}, about ${minutes}`,
  towards: {
    far: (row: number) => `Along row ${row}, away from the tagged end`,
    tagged: (row: number) => `Along row ${row}, towards the tagged end`,
    across: (row: number) => `Straight across, in row ${row}`,
  },
  start: {
    tagged_end: 'Go to the end with the row’s tag.',
    far_end: 'Go to the far end.',
    shorter_row_end: 'Go through where a shorter row ends.',
  },
  treesOn: (count: number) => plural(count, 'the first tree', `${count} trees on`),
  side: { left: 'on your left', right: 'on your right', ahead: 'ahead of you' },

  confirmTitle: 'Look at the tree. Is it this one?',
  rowAndPlace: (row: number, place: string) => `Row ${row}, ${place} from the tagged end.`,
  betweenTwo: (tree: string, others: string) => `${tree}, between two ${others}.`,
  leftAndRight: (tree: string, left: string, right: string) =>
    `${tree}, with ${left} on the left and ${right} on the right.`,
  aloneInRow: (tree: string) => `${tree}, alone in its row.`,
  gap: 'a gap',
  gaps: 'gaps',
  rowEnd: 'the end of the row',
  isIt: 'Is it?',
  yesClaim: 'Yes, claim it',
  notThisOne: 'No, another tree',
  withWhom: 'Who works with you?',
  alone: 'Alone',

  wasFirst: (name: string, tag: string) => `${name} was first. Take ${tag}.`,
  noneLeft: 'No tree is left for you right now',
  noneLeftWhy: 'Ask your lead for one. Until then help a neighbour.',
  noneBecause: 'What stands in the way',
  noneAlso: 'What else stands in the way',
}

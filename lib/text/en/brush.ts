/**
 * Hauling brush. Diseased wood apart, burned, buried or bagged and never left in piles: extension advice on Eutypa and fire blight
 * (UC IPM, Red Deer). The chipper is never volunteers' work here. The rest is common practice, no source.
 */

import { plural } from './plural'

export const brush = {
  row: (block: string, row: number) => `row ${block} ${row}`,
  instead: 'Haul brush instead',
  title: (row: string) => `Haul brush in ${row}`,
  none: 'No brush to haul',
  noneNote: 'No cut wood lies in a row, or somebody is at it. Ask your lead what comes next.',
  lies: (trees: number) =>
    plural(trees, 'Cut wood lies under 1 tree', `Cut wood lies under ${trees} trees`),
  goes: {
    burn: 'To the place where it is burned',
    chip: 'To the place where it is chipped. The chipper is not your work.',
    bag: 'Into bags',
    pile: 'On the pile at the end of the row',
  },
  goesUnknown: 'Nobody has said where it goes. Ask your lead.',
  sick: (trees: string) =>
    `Wood of ${trees} apart, bagged or burned. Never chip it into the rows, and leave no pile of it.`,
  keepAway: (trees: string) =>
    `Keep away from ${trees}: a hazard is flagged. That wood stays where it is.`,
  overhead: (who: string, tree: string) =>
    `${who} works with ladder or saw at ${tree}. Stay clear of it until they are down, and call before you pass.`,
  haulNear: (names: string) =>
    `Hauling brush here or in the next row: ${names}. Nobody stands below while you cut: call, and wait until they answer.`,
  gloves:
    'Gloves and eye protection on. Carry butt ends first, and nobody drags alone what takes two.',
  take: 'Take this row',
  join: (name: string) => `Join ${name}`,
  with: (names: string) => `Hauling here: ${names}`,
  otherRows: 'Other rows',
  toTrees: 'To the trees',
  needsSignal: 'Taking a row needs signal. What you hold you can finish without it.',

  inHand: (row: string) => `You haul ${row}`,
  stillLies: 'How far did you get?',
  all: 'All of it is hauled',
  part: 'Only a part',
  nothing: 'Nothing yet',
  from: 'From tree',
  to: 'to tree',
  inThisRow: 'In this row',
  leaveRow: 'I am leaving, the others stay',
  holdsRow: 'You are hauling a row',
  holdsRowNote: 'First say how far you got. Then take a tree.',
  backToIt: 'Back to your row',
  finish: 'The row is hauled',
  handBack: 'Hand it back like this',
}

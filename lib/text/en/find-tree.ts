/** Finding a tree: where one is, another tree, a tree by its tag, and why none is left. */

import { plural } from './plural'

export const findTree = {
  whereTitle: 'Where are you?',
  fromTree: (tag: string) => `Counted from ${tag}, your last tree`,
  fromPlace: (tag: string) => `Counted from ${tag}, where you said you are`,
  fromNowhere: (block: string) =>
    `Counted from the tagged end of its row. New here? Let your lead show you ${block}.`,
  changeWhere: 'I am somewhere else',
  block: 'Block',
  row: 'Row',
  end: 'Which end of the row?',
  taggedEnd: 'Tagged end',
  farEnd: 'Far end',
  iAmHere: 'I am here',

  otherTitle: 'Which tree are you taking?',
  byTag: 'By its tag',
  treeInRow: 'Tree',
  writeRow: (first: number, last: number) => `Write a row from ${first} to ${last}.`,
  writeTree: (row: number, first: number, last: number) =>
    `Row ${row} has trees ${first} to ${last}. Write one of them.`,
  noTreeThere: (tag: string) => `No tree stands at ${tag}. Look at the tag again.`,
  noSuchTree: 'There is no tree with this number',
  noSuchTreeWhy: 'The link may be old. Look at the tag and find it by its row.',
  goes: 'This is the one',

  reasons: {
    done: (trees: number) => plural(trees, '1 tree is done', `${trees} trees are done`),
    held: (trees: number) =>
      plural(trees, '1 tree is in somebody’s hands', `${trees} trees are in somebody’s hands`),
    dealt: (trees: number) =>
      plural(trees, '1 tree is dealt to others', `${trees} trees are dealt to others`),
    off: (trees: number) =>
      plural(
        trees,
        '1 tree is of a kind that is off today',
        `${trees} trees are of a kind that is off today`
      ),
    closed: (trees: number) =>
      plural(trees, '1 tree is closed: keep away', `${trees} trees are closed: keep away`),
    disease: (trees: number) =>
      plural(
        trees,
        '1 tree flagged for disease is for a lead to deal',
        `${trees} trees flagged for disease are for a lead to deal`
      ),
    unmarked: (trees: number) =>
      plural(
        trees,
        '1 tree has no big cuts marked yet',
        `${trees} trees have no big cuts marked yet`
      ),
    skill: (trees: number) =>
      plural(
        trees,
        '1 tree asks for a skill you do not have',
        `${trees} trees ask for a skill you do not have`
      ),
    tool: (trees: number) =>
      plural(
        trees,
        '1 tree asks for a tool you do not have',
        `${trees} trees ask for a tool you do not have`
      ),
    two: (trees: number) =>
      plural(trees, '1 tree asks for two people', `${trees} trees ask for two people`),
    near: (trees: number) =>
      plural(
        trees,
        '1 tree is too close to ladder or saw work',
        `${trees} trees are too close to ladder or saw work`
      ),
    other: (trees: number) =>
      plural(trees, '1 tree is not for now', `${trees} trees are not for now`),
  },
  healthyFirst: (trees: number, row: number) =>
    plural(
      trees,
      `Healthy, so before the flagged one in row ${row}`,
      `Healthy, so before the ${trees} flagged in row ${row}`
    ),
  mapLabel: (rows: string, tag: string) => `Map of rows ${rows}, with ${tag} on it`,
  lastTree: 'Your last tree',
  alongRow: (row: number) => `Along row ${row}`,
  atIt: 'You stand at it.',
}

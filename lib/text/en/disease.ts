/** The disease map: what is known, whether it is clustered, where to look next, which trees to replace. */

import { plural } from './plural'

/** From two up. */
const times = [
  'twice',
  'three times',
  'four times',
  'five times',
  'six times',
  'seven times',
  'eight times',
  'nine times',
  'ten times',
]

export const disease = {
  title: 'Disease map',
  counting: 'Counting…',
  headline: {
    clustered: (ratio: number) => `Clustered: ${moreSick(ratio)}`,
    spread_out: 'Spread out: fewer sick neighbours than chance would give',
    chance: 'No pattern: chance alone would do this',
    too_few: (sick: number) =>
      `Too few to tell: ${plural(sick, '1 sick tree', `${sick} sick trees`)}`,
    none: 'Nothing is flagged here',
    one_sick: 'Too few to tell: 1 sick tree',
    all_sick: 'Every tree of its kind here is sick',
    no_neighbours: 'No pattern: no tree of its kind stands beside another',
  },
  fewSick: 'With so few, one more tree can change this.',
  incidence: (sick: string, trees: string, kinds: string) =>
    `${sick} of ${trees} flagged (${kinds}).`,
  between: (share: string, low: string, high: string) =>
    `That is ${share}, likely between ${low} and ${high}.`,
  certain: (confirmed: string, suspected: string) =>
    `${confirmed} confirmed, ${suspected} only suspected.`,
  fromFlags:
    'Counted from flags: a tree that nobody looked at counts as not sick. Look before you decide.',

  sign: 'Which sign?',
  anySign: 'Every sign',
  where: 'Where?',
  everywhere: 'The whole orchard',
  which: 'Which flags count?',
  suspectedToo: 'All',
  confirmedOnly: 'Confirmed only',
  howFar: 'How far round the sick trees?',
  ring1: 'Next trees',
  ring2: 'Two trees out',

  legend: 'Signs on this map',
  confirmed: 'Confirmed',
  suspected: 'Suspected',
  toScout: 'To look at',
  mapLabel: 'Map of the sick trees. Arrows go from tree to tree, Enter opens one.',
  isConfirmed: 'disease confirmed',
  isSuspected: 'disease suspected',
  isToScout: 'to look at',

  scout: (count: number) => plural(count, 'Look at 1 tree', `Look at ${count} trees`),
  scoutNone: 'No tree to look at',
  scoutNoneNote: 'A list comes with the first sick tree.',
  order: 'In which order?',
  walking: 'In walking order',
  byRisk: 'Most at risk first',
  sickBeside: (count: number) => `beside ${plural(count, '1 sick tree', `${count} sick trees`)}`,
  oneFurther: 'one tree further out',
  kin: {
    shares_disease: 'a kind that can share it',
    other_kind: 'another kind, look last',
  },
  pick: (count: number) => plural(count, 'Pick 1 tree to deal', `Pick ${count} trees to deal`),
  pickSub: 'Whoever gets them looks first, then prunes.',
  print: 'Print the list',
  andMore: (count: string) => `${count} more are on the map and on paper.`,
  howListed:
    'Its own kind first, then the nearest, then those with more sick neighbours: common practice. Kinds that share a disease are those that a source names.',

  paperTitle: (where: string) => `Trees to look at: ${where}`,
  paperNote:
    'Look at every limb, trunk to tip. Write what you see; clean the blade before the next tree if you cut.',
  columns: {
    tree: 'Tree',
    kind: 'Kind',
    why: 'Why',
    healthy: 'Nothing seen',
    seen: 'What was seen',
  },

  figures: 'The figures behind it',
  showFigures: 'Show the figures behind it',
  hideFigures: 'Hide the figures',
  figure: {
    pairs: 'Pairs of neighbours, both sick',
    ofChance: (seen: string, expected: string) => `${seen}; chance gives ${expected}`,
    mixed: 'One sick, one not',
    chanceOf: 'Chance of as many pairs or more',
    inShuffles: (p: string, rounds: string) => `${p}, by ${rounds} shuffles`,
    z: 'The same by formula, z',
    moran: 'Moran’s I',
    moranValue: (i: string, mean: string, p: string) => `${i}; chance gives ${mean}; p ${p}`,
    rows: 'Rows where sick trees stand together',
    rowsValue: (together: string, rows: string, z: string) =>
      `${together} of ${rows} tested; z ${z}`,
    quadrats: 'Index of dispersion',
    quadratsValue: (index: string, count: string, p: string) =>
      `${index} in ${count} groups of six trees; p ${p}`,
    notDefined: 'not defined: too few',
    severalKinds: 'not defined: several kinds of tree',
  },
  method: [
    'Neighbours stand beside each other in the row, across the alley or over the corner; a gap lets nothing through. Only kinds of tree that have it are counted.',
    'In each shuffle as many sick trees of each kind are dealt out blindly. One look in twenty says clustered by chance alone.',
    'Join counts and Moran’s I: Cliff and Ord 1981. Runs along rows: Madden and others 1982, Phytopathology 72:195. Index of dispersion: Madden and Hughes 1995. Interval: Wilson 1927.',
  ],
  hosts: 'Which kinds share a disease',

  replace: 'Trees to think about replacing',
  replaceNote:
    'A proposal. The manager decides, and writes it on the flag. How long a kind usually bears well is common practice, no source.',
  noneToReplace: 'None is dead, or badly sick and old or beside young trees.',
  reason: {
    dead: 'dead',
    badly_sick: (sign: string) => `badly sick: ${sign}, confirmed`,
    old: (years: number, usual: number) => `${years} years old; usual for its kind: ${usual}`,
    beside_young: (trees: number) =>
      `beside ${plural(trees, '1 young tree', `${trees} young trees`)}`,
    sick_neighbours: (trees: number) =>
      plural(trees, '1 neighbour is sick, too', `${trees} neighbours are sick, too`),
  },
  decide: 'Write what is decided',
  toMap: 'Disease map',
  onMap: 'Disease',
  offMap: 'Disease off',
}

function moreSick(ratio: number): string {
  if (ratio < 1.25) return 'a few more sick neighbours than chance would give'
  const known = ratio < 1.75 ? 'one and a half times' : times[Math.round(ratio) - 2]
  const so = known === undefined ? 'more than ten times' : `about ${known}`
  return `${so} as many sick neighbours as chance would give`
}

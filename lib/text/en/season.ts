/** What a season asks for, and what is supposed for it. */

import { plural } from './plural'

const between = (from: number, to: number) => (from === to ? `${from}` : `${from} to ${to}`)

export const season = {
  title: 'The season ahead',
  roomNote: 'Hours, dry days, and how many people it takes',
  lead: 'How much there is to prune, in which months, and how many people that takes.',
  hours: (trees: number, from: number, to: number) =>
    `${plural(trees, '1 tree is', `${trees} trees are`)} left, about ${between(from, to)} hours of one person.`,
  people: (from: number, to: number, days: number) =>
    `On ${plural(days, 'one dry day', `${days} dry days`)} that is about ${plural(to, '1 person', `${between(from, to)} people`)} each time.`,
  noDay: 'For some trees no dry day is left in their months: assume more days, or other months.',
  noTrees: 'No tree is left to prune.',
  often: 'Eight times out of ten it comes out within this, if what is assumed below holds.',
  bySpecies: 'By species',
  species: 'Trees',
  left: 'Left',
  hoursHead: 'Hours',
  months: 'Months',
  days: 'Dry days',
  hoursWords: between,
  monthsWords: (from: string, to: string) => (from === to ? from : `${from} to ${to}`),
  supposed: 'What is assumed',
  fromMonth: 'From',
  toMonth: 'Until the end of',
  daysAMonth: 'Days of work a month',
  hoursADay: 'Hours of each person on such a day',
  dryTenths: 'Dry days out of ten',
  fewer: (what: string) => `Fewer: ${what}`,
  more: (what: string) => `More: ${what}`,
  counted: (days: number, dry: number) =>
    `Counted from hours: ${dry} of ${plural(days, '1 day', `${days} days`)} dry. Months without five days keep what is assumed.`,
  paste: 'Count dry days from hourly weather',
  pasteHint:
    'Paste hours of past seasons with their rain. A day is dry with less than 0.25 mm (0.01 in) from 6 to 18 o’clock.',
  ownMonths:
    'Apricots and cherries keep the months of the house rules (University of California), whatever is set here.',
  rests: (trees: number) =>
    plural(
      trees,
      'Minutes per tree: from 1 finished tree and published figures.',
      `Minutes per tree: from ${trees} finished trees and published figures.`
    ),
  share: (share: string) => `${share} of the time is at trees, breaks not counted.`,
  brush: (from: number, to: number) =>
    `Hauling the cut wood is not in it: about a third more, ${between(from, to)} hours (New Hampshire, Bulletin 257, 1931).`,
}

/** Why a topic is proposed, in words for the lead; and the same facts in words for the crew. */

import { plural } from './plural'

export const proposals = {
  always: 'Always included.',
  off: (what: string, why: string) => `Off today: ${what} (${why}).`,
  ladders: 'ladders',
  ladderTrees: (count: number) =>
    plural(
      count,
      '1 tree of the round asks for a ladder.',
      `${count} trees of the round ask for a ladder.`
    ),
  sawTrees: (count: number) =>
    plural(
      count,
      '1 tree of the round asks for a saw.',
      `${count} trees of the round ask for a saw.`
    ),
  minors: (count: number) =>
    plural(
      count,
      '1 person is under age. Name nobody.',
      `${count} people are under age. Name nobody.`
    ),
  hazard: (sign: string, trees: string) => `${sign}: ${trees}.`,
  disease: (block: string, count: number) =>
    plural(
      count,
      `${block}: 1 tree is flagged for disease.`,
      `${block}: ${count} trees are flagged for disease.`
    ),
  heatWave: 'A heat wave is expected: everybody is watched closely today.',
  newInHeat: (count: number) =>
    plural(
      count,
      '1 person here is in the first 14 days and watched closely in heat. Name nobody.',
      `${count} people here are in their first 14 days and watched closely in heat. Name nobody.`
    ),
  round: { winter: 'A winter round.', summer: 'A summer round.' },

  notIn: 'Proposed and not in it',
  take: 'Add it',
  takeTopic: (topic: string) => `Add: ${topic}`,
  newFacts: 'New since it was written:',
  putIn: (topic: string) => `Put the new facts in: ${topic}`,
  putInShort: 'Put it in',
  nowAt: (topic: string, place: number, all: number) => `${topic}: now ${place} of ${all}.`,
  optional: (language: string) => `${language}, if you can`,

  askTitle: 'What only you can see',
  ask: {
    slope: 'Is any ground so steep or wet that a foot or a ladder slips?',
    nests: 'Has anybody seen bees, wasps or hornets this morning?',
    lines: 'Does a power line run over or beside these rows?',
    heat: (c: number, f: number) => `Will it be ${c} °C (${f} °F) or warmer?`,
    cold: (c: number, f: number) => `Is it below ${c} °C (${f} °F), or is there ice?`,
    wind: (kmPerH: number, mph: number) =>
      `Are gusts of ${kmPerH} km/h (${mph} mph) to be expected? Small trees sway.`,
    thunder: 'Could there be thunder?',
    wet: 'Are the trees or the ladders wet?',
  },
  yesTo: (question: string) => `Yes: ${question}`,
  noTo: (question: string) => `No: ${question}`,

  nothingNew: 'Change something first.',
  comeDownNote:
    'It fills the screen of everybody at a tree until they have signed. Their trees stay theirs. Shout it too, and see who comes down: a phone is not the alarm.',
  beforeNextNote: 'They go on at their tree, and sign before the next one.',

  versions: 'What was told before',
  version: (version: number) => `Version ${version}`,
}

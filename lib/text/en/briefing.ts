/** The safety briefing, topic by topic, and signing it. */

import { plural } from './plural'

export const briefing = {
  title: 'Safety briefing',
  topicOf: (topic: number, topics: number) => `Briefing, topic ${topic} of ${topics}`,
  progress: (topic: number, topics: number) => `Topic ${topic} of ${topics}`,
  nextTopic: 'Next topic',
  toSigning: 'To the signing',
  givenBy: 'Your lead gives the briefing. The phone only records it.',
  notGivenYet: 'Not given yet. Listen to your lead first, then sign.',
  givenNote: (name: string) => `${name} briefed you.`,
  version: (version: number, time: string) => `Version ${version}, ${time}.`,
  changedAt: (version: number, time: string) =>
    `Version ${version}, changed ${time}. Everyone signs again.`,
  newTopic: 'New',
  comeDown: 'Come down now and hear what changed.',
  beforeNextTree: 'Hear what changed before your next tree.',
  howHeard: 'How did you get it?',
  heard: 'I heard it',
  readToMe: 'It was read to me',
  readMyself: 'I read it',
  chooseHow: 'Say how you got it, then sign.',
  sign: 'Sign the briefing',
  signAs: (name: string, topics: number) =>
    plural(topics, `as ${name}, 1 topic`, `as ${name}, all ${topics} topics`),
  signed: (time: string) => `Signed at ${time}`,
  none: 'No briefing is written yet. Your lead writes it.',
  localRulesWin: 'Where local rules ask for more, they win.',
}

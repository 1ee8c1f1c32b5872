/** The safety briefing, topic by topic, and signing it. */

import { plural } from './plural'

export const briefing = {
  title: 'Safety briefing',
  progress: (topic: number, topics: number) => `Topic ${topic} of ${topics}`,
  nextTopic: 'Next topic',
  yourLeadSays: 'From your lead',
  notGivenYet: 'Not given yet. Listen to your lead first, then sign.',
  given: 'A lead put down that you heard it.',
  version: (version: number) => `Version ${version}.`,
  changed: (version: number) => `Version ${version}: something is new. Everyone signs again.`,
  howHeard: 'How did you get it?',
  heard: 'I heard it',
  readToMe: 'It was read to me',
  readMyself: 'I read it',
  chooseHow: 'Say how you got it, then sign.',
  sign: 'Sign the briefing',
  signAs: (name: string, topics: number) =>
    plural(topics, `as ${name}, 1 topic`, `as ${name}, all ${topics} topics`),
  signed: (version: number) => `Signed, version ${version}`,
  goOn: 'Go on',
  none: 'No briefing is written yet. Your lead writes it.',
  noShift: 'No shift is planned, so there is no briefing.',
  reading: 'Fetching the briefing…',
  notRead:
    'The briefing could not be fetched. Listen to your lead; open it again where there is signal.',
}

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
  newTitle: (version: number) => `What is new since version ${version}`,
  newNote: 'You signed that one. Read what is new, then sign again.',
  added: 'New',
  reworded: 'Reworded',
  leftOut: 'No longer included',
  onlyOrder: 'The same topics in another order.',
  readSame: (count: number) =>
    plural(count, 'Read the 1 other topic too', `Read the ${count} other topics too`),
  writtenIn: { en: 'Written in English only.', es: 'Written in Spanish only.' },
  comeDown: {
    title: 'Come down now',
    orders: 'Feet on the ground, blades closed, out from under the tree. Then read what changed.',
    treeStaysYours: (tag: string) => `${tag} stays yours. You go on as soon as you have signed.`,
    staysYours: 'The row stays yours. You go on as soon as you have signed.',
    notRead: 'What changed cannot be fetched here. Go to your lead and hear it.',
    iRead: 'I am down and have read it',
    iWasTold: 'I am down and my lead told me',
    signAs: (name: string, version: number) => `Signs version ${version} as ${name}`,
  },
  howHeard: 'How did the briefing reach you?',
  heard: 'I heard it',
  readToMe: 'It was read to me',
  readMyself: 'I read it',
  chooseHow: 'Say how it reached you, then sign.',
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

/** Before you start: what is missing before the first tree, and the way to each. */

import { plural } from './plural'

const words = ['No', 'One', 'Two', 'Three', 'Four', 'Five', 'Six']

export const ready = {
  title: 'Before you start',
  toDo: (count: number) =>
    plural(
      count,
      'One thing to do before your first tree',
      `${words[count] ?? count} things to do before your first tree`
    ),
  waitTitle: 'All yours is done. Wait for your lead.',
  readyTitle: 'You are ready',
  readyNote: 'Take the next tree whenever you like.',
  whyLocked: 'No tree can be claimed until all of this is done.',
  goToTree: 'Find the next tree',

  inCrew: 'You are in the crew',
  joinedAs: (time: string, name: string) => `Joined ${time} as ${name}`,
  arrive: 'Arrive',
  arriveNote: 'Be counted, so that nobody is looked for.',
  arriveButton: 'I am here',
  arrived: (time: string) => `Counted at ${time}`,
  consent: 'Consent for the season',
  consentNote: 'Read it once. An adult agrees for those under age.',
  consentButton: 'Read and agree',
  briefing: 'Safety briefing',
  briefingNote: (topics: number) =>
    plural(
      topics,
      '1 topic. Your lead gives it, you sign.',
      `${topics} topics. Your lead gives it, you sign.`
    ),
  briefingWait: 'Your lead gives it to all of you. You sign after.',
  briefingChanged: 'Something changed. Hear what is new and sign again.',
  briefingButton: 'Open the briefing',
  equipment: 'Protection',
  equipmentNote: 'Gloves, eyes, head, shoes: look at each once.',
  equipmentButton: 'Check protection',
  tools: 'Tools',
  toolsNote: 'Fetch yours from the bench and check each.',
  toolsButton: 'Take tools',
  shiftNotOpen: 'The shift is not open yet',
  shiftOpensAt: (name: string, time: string) =>
    `${name} opens it, planned for ${time}. Nothing for you to do.`,
  shiftOpens: 'Your lead opens it. Nothing for you to do.',
  noShift: 'No shift is planned today',
  noShiftNote: 'Your lead plans it. Look in again then.',
  adult: 'An adult who answers for you',
  adultNote: 'The adult must have arrived. Your lead puts it down.',
  stopped: 'Work is stopped',
  stoppedNote: 'Answer the stop first. Only a lead lets work go on.',
  meetAt: (place: string, time: string) => `Meet at ${place} at ${time}`,
}

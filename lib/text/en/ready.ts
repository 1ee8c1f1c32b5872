/** Before you start: what is missing before the first tree, and the way to each. */

import { plural } from './plural'

const words = ['No', 'One', 'Two', 'Three', 'Four', 'Five', 'Six']

export const ready = {
  title: 'Before you start',
  toDo: (count: number) =>
    plural(
      count,
      'One thing to do before your next tree',
      `${words[count] ?? count} things to do before your next tree`
    ),
  waitTitle: 'Your part is done. The dashed steps are for others.',
  waitBriefingTitle: 'Go and hear your lead’s briefing',
  readyTitle: 'You are ready',
  readyNote: 'Take the next tree whenever you like.',
  visitorTitle: 'You are here as a visitor',
  visitorNote: 'Be counted, look around and stay out from under the trees. A lead can change that.',
  whyLocked: 'No tree until all of this is done.',
  goToTree: 'Find the next tree',
  backToTree: 'Back to your tree',

  inCrew: 'You are in the crew',
  inCrewAs: (name: string) => `As ${name}`,
  notAdmitted: 'A lead lets you in',
  notAdmittedNote: 'Tell your lead your name.',
  arrive: 'Be counted',
  arriveNote: 'So that nobody is looked for at dusk.',
  arriveButton: 'I am here',
  arrived: (time: string) => `Here since ${time}`,
  onBreak: 'You are on a break',
  onBreakNote: (time: string) => `Since ${time}. No time limit.`,
  endBreakButton: 'Back to work',
  consent: 'Consent for the season',
  consentNote: 'Read it once. An adult agrees for those under age.',
  consentDone: 'Agreed for this season',
  consentButton: 'Read and agree',
  given: (name: string | null) => `${name ?? 'Your lead'} gives the briefing`,
  givenAt: (time: string) => `At ${time}, to all of you. Go there and listen.`,
  givenNote: 'Given to you by a person',
  givenWait: (name: string | null) =>
    `Nothing to tap. ${name ?? 'Your lead'} puts down that you heard it.`,
  briefing: 'Sign the briefing',
  briefingNote: 'Listen first, then look through it and sign.',
  briefingAgain: 'Something changed. Hear what is new and sign again.',
  comeDown: 'The briefing changed. Come down now and hear what is new.',
  briefingDone: (version: number) => `Signed, version ${version}`,
  briefingButton: 'Open the briefing',
  equipment: 'Protection',
  equipmentNote: 'Gloves, eyes, shoes: look at each once.',
  equipmentDone: 'Checked today',
  equipmentButton: 'Check protection',
  tools: 'Tools',
  toolsNote: 'Fetch yours from the bench and look at each.',
  toolsFailed: 'One in your hand is out of use. Give it back.',
  toolsNotClean: 'One in your hand is not clean. Wipe it and say so.',
  toolsDone: (tools: string) => `In your hand: ${tools}`,
  toolsButton: 'Take tools',
  shiftNotOpen: 'The shift is not open yet',
  shiftOpensAt: (name: string | null, time: string) =>
    `${name ?? 'Your lead'} opens it, planned for ${time}. Nothing for you to do.`,
  noShift: 'No shift is planned',
  noShiftNote: 'Your lead plans it. Check again then.',
  adult: (name: string | null) =>
    name === null ? 'An adult who answers for you' : `${name} answers for you`,
  adultNote: 'The adult must have arrived. Your lead puts down who it is.',
  adultConsents: 'Your parent or guardian agrees, on this device or with your lead.',
  notNow: 'Nobody works now',
  stopped: 'Work is stopped',
  stoppedNote: 'Only a lead lets it go on. Wait at the meeting point.',
  stopAnswer: 'Answer the stop',
  stopAnswerNote: 'Say that you heard that work goes on.',
  meet: (time: string | null) => (time === null ? 'Meeting point' : `Meet at ${time}`),
}

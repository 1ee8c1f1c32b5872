/** The queue of flags for leads and managers, and what they do about each. */

import { plural } from './plural'

export const flags = {
  tab: 'Flags',
  title: (waiting: number) =>
    plural(waiting, '1 flag waits for a lead', `${waiting} flags wait for a lead`),
  nothingWaits: 'No flag waits for a lead',
  none: 'Nothing is flagged',
  noneNote: 'Anybody flags what they see, from the strip at the foot of their phone.',
  offline:
    'No signal. You see what this device knew. What you write is kept and goes out by itself; clearing needs signal.',
  hazards: 'Hazards',
  diseases: 'Disease',
  printAll: 'Print all referrals',

  states: { suspected: 'suspected', confirmed: 'confirmed', open: 'closed, for the arborist' },
  reported: (name: string, when: string, ago: string) => `${name}, ${when}, ${ago} ago`,
  keepOut: (distance: string) => `Keep-out ${distance}`,
  noKeepOut: 'Only this tree is closed',
  reading: 'Reading notes…',
  notRead: 'Notes cannot be read without signal.',
  photo: (tag: string, no: number) => `Photo ${no} of ${tag}`,
  photoComing: 'Photo is coming…',
  photoNotRead: 'The photo cannot be read without signal.',

  inside: 'Told to come out',
  wasAt: (tag: string) => `was at ${tag}`,
  wasAtRow: 'was at a row of brush',
  isOut: 'is out',
  notOut: 'has not said that they are out',
  seenByMe: 'Seen out by me',
  seenOut: (name: string) => `I saw ${name} come out`,

  onMap: 'Map',
  refer: 'Referral sheet',
  onMapOf: (tag: string) => `Show ${tag} on the map`,
  confirm: 'Confirm',
  correct: 'Correct',
  withdraw: 'Withdraw',
  write: 'Write what is done',
  changeKeepOut: 'Keep-out',
  clear: 'Clear',
  clearWho: 'The manager clears it when the arborist has been.',
  cancel: 'Not now',

  confirmTitle: (tag: string) => `Confirm disease on ${tag}`,
  confirmNote:
    'Look at the tree yourself. What you choose replaces what was reported; the tools used there count as not clean.',
  confirmSign: 'Choose which sign.',
  noteForLeads: 'A few words for leads',
  noteHint: 'What to do, when to look again. Nothing about people.',
  withdrawTitle: (tag: string) => `Withdraw the flag on ${tag}`,
  withdrawNote: 'The tree is open again. Whoever reported it sees what you write.',
  withdrawWhy: 'Why is it not disease?',
  writeTitle: (tag: string) => `What is done about ${tag}`,
  writeNote: 'For leads and managers: who was called, when they come, when to look again.',
  writeWords: 'In a sentence or two',
  writeFirst: 'Write a few words.',
  keepOutTitle: (tag: string) => `Keep-out around ${tag}`,
  keepOutNote:
    'Claims inside end now, and everybody at these trees is told to come down. The phone is not the alarm: tell them yourself.',
  keepOutWider: 'A lead makes it wider. Only a manager makes it narrower.',
  keepOutHow: (unit: string) => `How far around the tree, in ${unit}`,
  keepOutSource: (distance: string) =>
    `Without a choice it is ${distance}: this orchard’s rule. Common practice, no source; a taller tree asks for more. Local rules win.`,
  keepOutWrong: (most: string) => `Write a distance from 0 to ${most}.`,
  keepOutNarrower: (now: string) => `It is ${now} now. Only a manager makes it narrower.`,
  keepOutSet: 'Set the keep-out',
  clearTitle: (tag: string) => `Clear the hazard on ${tag}`,
  clearNote:
    'Only when a licensed arborist has been. The tree and the ground around it are open again. Kept in the records.',
  clearDone: 'What was done',
  clearBy: 'Arborist or company',
  clearOn: 'On which day',
  clearAll: 'Say what was done, by whom and on which day.',
  clearLater: 'This day is in the future.',

  metres: 'metres',
  feet: 'feet',
}

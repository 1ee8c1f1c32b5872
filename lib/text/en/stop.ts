/** Stop work: the signal, the call, what everybody does, and that work goes on. */

import { plural } from './plural'

export const stop = {
  title: 'Stop work',
  goesOnTitle: 'Work goes on',
  goesOnWhy: 'A lead lets work go on. Look around you before you start.',
  goesOnAnswer: 'I have heard it',
  calledBy: (name: string | null) => `${name ?? 'Somebody'} stopped all work.`,
  calledByYou: 'You stopped all work.',
  calledInBlock: (name: string | null, block: string) =>
    `${name ?? 'Somebody'} stopped work in ${block}.`,
  since: (time: string) => `Since ${time}.`,
  orders: {
    signal: 'Give the signal, now',
    shout: 'And shout: stop work! The phone is never the alarm.',
    tools: 'Tools down, blades closed',
    toolsNote: 'Leave the tree as it is. It stays yours.',
    out: 'Out from under the trees',
    outNote: 'Keep to the alley.',
    walk: 'Walk to the meeting point',
    walkNote: 'Be counted there.',
  },
  comeOut: {
    title: 'Come down, leave it',
    hazard: (name: string | null, tag: string) => `${name ?? 'Somebody'} flagged a hazard: ${tag}.`,
    leaveIt: (tag: string | null) =>
      tag === null ? 'Leave the brush where it is.' : `Leave ${tag} as it is. It counts as begun.`,
    outOf: (distance: string, tag: string) => `Keep ${distance} away from ${tag}`,
    outFrom: (tag: string) => `Out from under ${tag}`,
    passItOn: 'Tell who is beside you: their phone may sleep.',
    stayOut: 'Do not go back in',
    leadDecides: 'Your lead says where you work on.',
    iAmOut: 'I am out',
  },
  answered: (some: number, all: number) => `${some} of ${all} people have answered.`,
  iStopped: 'I have stopped',
  emergency: 'Emergency',
  callLead: 'Call lead',
  keptNotSent: 'Not sent yet: there is no signal. Give the signal, shout it, pass it on.',

  signals: {
    horn: 'Three long blasts of the horn',
    whistle: 'Three long whistles',
    voice: 'Shout: stop work!',
  },
  first: 'First, and loudly:',
  shoutToo: 'Shout it too, again and again, and have others pass it on.',
  phoneNote: 'The phone only counts who has stopped. It wakes nobody.',
  send: 'Stop all work',
  where: 'Where?',
  everywhere: 'Whole orchard',
  sendBlock: (block: string) => `Stop work in ${block}`,
  sendNote: 'and count who has answered',
  noShift: 'No shift is open, so there is nobody to count. Give the signal all the same.',
  inForce: 'Work is stopped',
  waitForLead: 'Only a lead lets it go on. Wait at the meeting point.',
  notAnswered: (names: string) => `Not answered: ${names}.`,
  bannerStopped: 'Work is stopped.',
  bannerSee: 'See',
  outOfTouch: (minutes: number) =>
    plural(
      minutes,
      'Out of touch for 1 minute. A stop does not reach this phone: stay in earshot.',
      `Out of touch for ${minutes} minutes. A stop does not reach this phone: stay in earshot.`
    ),
}

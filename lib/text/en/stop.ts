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
    passItOn: 'Tell whoever is beside you: their phone may be asleep.',
    stayOut: 'Do not go back in',
    leadDecides: 'Your lead says where you work on.',
    iAmOut: 'I am out',
  },
  leaveTree: {
    title: {
      thunder: 'Thunder: come down, get out',
      too_windy: 'Storm: come down, get out',
      too_hot: 'Too hot: come into the shade',
      dark: 'Dark: come down, come in',
      ladders_off: 'Come off the ladder',
      species_off: 'Stop here, come out',
    },
    why: {
      thunder: 'Thunder was heard.',
      too_windy: 'Gusts are above the limit for work.',
      too_hot: 'It feels hotter than the limit for work.',
      dark: 'The sun is down, and your lead ended the work under lamps.',
      ladders_off:
        'Gusts are above the limit for ladders, the light is going, or your lead put ladders off.',
      species_off: 'These trees are off now: wet wood, rain, or your lead said so.',
    },
    go: {
      thunder: 'Into a building or a closed car',
      too_windy: 'Out from under the trees',
      too_hot: 'Rest and drink, now',
      dark: 'Walk out of the rows',
      ladders_off: 'Lay the ladder down',
      species_off: 'Make no more cuts',
    },
    goNote: {
      thunder: 'Never under a tree, nor beside a ladder or a fence.',
      too_windy: 'Branches break off. Keep to the open alley.',
      too_hot: 'Dizzy, sick or confused? Say so at once.',
      dark: 'Blades closed, ladder on the ground. Look where you tread.',
      ladders_off: 'What you reach from the ground may go on.',
      species_off: 'Put the tree down as half done.',
    },
    staysYours: (tag: string | null) =>
      tag === null ? 'Leave the brush where it is.' : `Leave ${tag} as it is. It stays yours.`,
    stay: 'Do not go back up',
    iAmDown: 'I am down',
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
  bannerOther: (name: string) =>
    `Work is stopped. ${name} uses this phone too and has not answered.`,
  bannerAnswer: 'Answer',
  outOfTouch: (minutes: number) =>
    plural(
      minutes,
      'Out of touch for 1 minute. A stop does not reach this phone: stay in earshot.',
      `Out of touch for ${minutes} minutes. A stop does not reach this phone: stay in earshot.`
    ),
}

/** The main limbs from above, and which of them to keep. */

import { plural } from './plural'

export const limbs = {
  title: 'Where do the main limbs stand?',
  lead: 'Seen from above, like spokes. Twelve at most. Kept on this phone.',
  wheel: 'The tree from above: north is up',
  tapHere: 'Tap the circle where a limb leaves the trunk.',
  limbAt: (no: number, degrees: number, side: string) => `Limb ${no}: ${degrees}°, ${side}`,
  typed: 'Or type where it points',
  typedHint: '0 is north, 90 east, 180 south, 270 west.',
  add: 'Add this limb',
  addFirst: 'Write where it points first.',
  full: 'Twelve limbs are noted. Take one away first.',
  turn: 'Point the phone along a limb',
  turnHow: 'Hold it flat at the trunk, its top towards the limb. Saw and wire turn the needle.',
  turnReading: (degrees: number, side: string) => `${degrees}°, ${side}`,
  turnSteep: 'Lay it flat to read it.',
  turnWaiting: 'Waiting for the compass…',
  turnStop: 'Put the compass away',
  turnInsecure: 'The compass needs a page opened over https. Tap the circle instead.',
  turnNone: 'This device has no compass. Tap the circle instead.',
  turnDenied: 'The compass was not allowed. Tap the circle instead.',
  condition: (no: number) => `Limb ${no}: how is it?`,
  conditions: { sound: 'Sound', worn: 'Worn', poor: 'Poor' },
  more: (no: number) => `Limb ${no}: thickness and angle`,
  thick: 'Thickness at the trunk',
  angle: 'Angle from upright',
  angleHint: '0 stands upright, 90 lies flat.',
  remove: (no: number) => `Take limb ${no} away`,
  away: 'Take away',
  clear: 'Begin again',
  keep: 'How many to keep?',
  few: 'Note more limbs than you want to keep.',
  before: 'Before',
  after: 'After',
  keepThese: (limbs: string) => `Keep ${limbs}.`,
  outcome: (before: number, after: number) =>
    `The smallest gap grows from ${before}° to ${after}°.`,
  outcomeSame: (gap: number) => `The smallest gap stays ${gap}°.`,
  others: (count: number) =>
    plural(count, 'The other one stands too close.', `The other ${count} stand too close.`),
  noted: (count: number) => plural(count, '1 limb', `${count} limbs`),
  largest: (degrees: number) => `Largest gap ${degrees}°.`,
  evenness: (share: string) => `They lean ${share} to one side: 0% is even, 100% all one way.`,
  chance: (share: string) => `Chance alone leans as much in ${share} of trees (Rayleigh).`,
  chanceLess: (share: string) =>
    `Chance alone leans as much in less than ${share} of trees (Rayleigh).`,
  weights:
    'Worn counts 0.8, poor 0.4 of a sound limb; steeper than 30° 0.7, flatter than 75° 0.8. Common practice, no source.',
  decides: 'A lead decides which main limb goes, and in which winter. One or two a winter at most.',
  tooThick: (limbs: string, limit: string) =>
    `${limbs}: thicker than ${limit}. The arborist’s, not ours.`,
  refer: 'Flag it',
}

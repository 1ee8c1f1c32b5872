/** Breaks, going home, and being counted out. */

import { plural } from './plural'

export const breakLeave = {
  title: 'Break or go home',
  hereSince: (time: string) => `Here since ${time}`,
  takeBreak: 'Take a break',
  takeBreakNote: 'Water and shade. No time limit, and nobody asks why.',
  onBreakTitle: 'On a break',
  onBreakSince: (time: string) => `Since ${time}. Come back when you like.`,
  backToWork: 'Back to work',
  leave: 'I am going home',
  leaveTitle: 'Be counted out',
  leaveNote: 'So that nobody looks for you at dusk.',
  before: 'Before you go:',
  stillHeld: (tag: string) => `You still hold ${tag}`,
  stillAtRow: 'You are still working on a row',
  finishFirst: 'Finish it, leave it half done, or hand it over.',
  stillTools: (tools: string) => `Still in your hand: ${tools}`,
  giveBackFirst: 'Give back what you took.',
  breakNeedsTree: 'A break comes after the tree: finish it or leave it half done first.',
  unsentFirst: (count: number) =>
    plural(count, '1 thing is not sent yet', `${count} things are not sent yet`),
  unsentFirstNote: 'It stays on this phone and goes out by itself. Keep Rowcall open until it is.',
  countedOut: (time: string) => `Counted out at ${time}`,
  thanks: (trees: number) =>
    plural(trees, 'One tree is done because of you.', `${trees} trees are done because of you.`),
  goodWay: 'Have a good trip home.',
  cameBack: 'I am back',
  notHere: 'You are not counted in',
  notHereNote: 'Say “I am here” when you arrive.',
  shiftNotOpen: 'The shift is not open, so nobody is counted.',
}

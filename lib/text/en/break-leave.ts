/** Breaks, going home, and being counted out. */

import { plural } from './plural'

export const breakLeave = {
  title: 'Break or go home',
  takeBreak: 'Take a break',
  takeBreakNote: 'Your tree stays yours. No time limit.',
  onBreakSince: (time: string) => `On a break since ${time}`,
  backToWork: 'Back to work',
  leave: 'Go home',
  leaveTitle: 'Be counted out before you go',
  leaveNote: 'So that nobody looks for you at dusk.',
  stillHeld: (tag: string) => `You still hold ${tag}`,
  finishFirst: 'Finish it or leave it half done first.',
  stillTools: (count: number) =>
    plural(count, '1 tool is still in your hand', `${count} tools are still in your hand`),
  giveBackFirst: 'Give back what you took.',
  unsentFirst: 'Some work is not sent yet',
  unsentFirstNote: 'It stays on this phone and goes out by itself. Keep the phone on.',
  signOut: 'I am going home',
  signedOut: (time: string) => `You are counted out since ${time}.`,
  thanks: (trees: number) =>
    plural(trees, 'One tree is done because of you.', `${trees} trees are done because of you.`),
  cameBack: 'I am back',
}

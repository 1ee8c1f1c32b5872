/** Whom a lead watches closely in heat, and why. */

import { plural } from './plural'

export const closeWatch = {
  title: 'Watch closely',
  wave: (high: string, usual: string) =>
    `Heat wave: today up to ${high}, and ${usual} on average in the five days before. Watch everybody closely.`,
  waveUnknown:
    'Not known whether it is a heat wave: highs of today or of the five days before are missing. It is one at 26.7 °C (80 °F) or more and 5.5 °C (10 °F) above their average; then watch everybody.',
  names: (list: string, day: number) =>
    day === 1 ? `${list}: first day here` : `${list}: day ${day} of the first 14`,
  namesUnknown: 'Who is new could not be read. Ask who is in their first 14 days here.',
  whenWarm: (count: number) =>
    plural(
      count,
      'One person here is in the first 14 days: named here from 26.7 °C (80 °F).',
      `${count} people here are in their first 14 days: named here from 26.7 °C (80 °F).`
    ),
  counted: 'Days of work in this round, today with them.',
  source:
    'Cal. Code Regs. Title 8 §3395 (g), taken on as a house rule. The 14 days are from its older text, the heat wave from memory: look them up. Local rules win.',
}

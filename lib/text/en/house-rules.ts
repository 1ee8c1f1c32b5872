/** Numbers that an orchard sets for itself, each with where it comes from. */

import { weatherRules } from './weather-rules'

export const houseRules = {
  title: 'House rules',
  lead: 'Numbers of this orchard. Where the law or your insurance asks for more, that wins.',
  onlyManager: 'A manager changes them. These are the ones in force.',
  link: 'House rules',
  back: 'Back to the shift',
  unit: {
    cm: 'cm',
    m: 'm',
    min: 'minutes',
    in: 'in',
    ft: 'ft',
    'km/h': 'km/h',
    mph: 'mph',
    '°C': '°C',
    '°F': '°F',
    '°': 'degrees',
    h: 'hours',
    d: 'days',
    month: 'month, 1 to 12',
  },
  usual: (usual: string, least: string, most: string) =>
    `Usual ${usual}, from ${least} to ${most}.`,
  wrong: (least: string, most: string) => `Write a number from ${least} to ${most}.`,
  save: 'Save the house rules',
  nothing: 'Nothing is changed.',
  fault: 'A number is out of range. It is marked above.',
  saved: 'Saved. Every phone has them now.',
  cleaning: {
    each_cut: 'After each cut into sick wood',
    when_growing: 'After each cut while it grows, after the tree when dormant',
    each_tree: 'After the tree',
  },
  rules: {
    ladder_from_cm: {
      name: 'A tree asks for a ladder above',
      says: 'Higher trees ask for the ladder skill and for two people.',
      from: 'Common practice, no published number. Measure what your shortest people reach.',
    },
    limb_cm: {
      name: 'A limb is the arborist’s above',
      says: 'Shown at every step of the work. It can be thinner than usual, never thicker.',
      from: 'Common practice, 3 to 4 inches; no published number.',
    },
    pruner_cm: {
      name: 'The hand pruner takes live wood up to',
      says: 'Thicker is the lopper’s.',
      from: 'Common practice, 1/2 to 3/4 inch; no published number.',
    },
    lopper_cm: {
      name: 'The lopper takes wood up to',
      says: 'Thicker is sawn, in three cuts.',
      from: 'Common practice, 1 1/2 to 2 inches; no published number.',
    },
    pole_cm: {
      name: 'The pole pruner takes live wood up to',
      says: 'From the ground alone, and never near a power line. Thicker or dead is not cut from below.',
      from: 'Common practice, up to 1 inch; no published number.',
    },
    three_cut_out_cm: {
      name: 'Of three cuts the first is out from the collar by',
      says: 'From below, a third through: deeper pinches the saw, shallower lets the bark tear.',
      from: 'Sources differ: UC IPM 1 to 2 feet, the City of Scottsdale and the Wisconsin woodland programme 6 to 12 inches.',
    },
    three_cut_further_cm: {
      name: 'The second is further out by',
      says: 'From above, until it falls.',
      from: 'Sources differ: UC IPM 2 inches, the Wisconsin woodland programme 1 inch.',
    },
    feet_cm: {
      name: 'On a ladder, feet are no higher than',
      says: 'A limb that asks for more is the arborist’s. 0: nothing is cut from a ladder. It can be lower than usual, never higher.',
      from: 'Common practice, no published number; some groups bar ladders altogether.',
    },
    lean_deg: {
      name: 'A trunk is the arborist’s if it leans more than',
      says: 'A fresh lean with lifting soil is the arborist’s in any case. It can be less than usual, never more.',
      from: 'Common practice; no public guide prints a number.',
    },
    clean_tools: {
      name: 'In a sick tree a blade is cleaned',
      says: 'After the tree in any case: a tool that is not clean begins no other.',
      from: 'Sources differ. UC IPM: when cutting into infected wood. University of Illinois: only in the growing season. Washington State University: being quick matters more.',
    },
    keep_out_m: {
      name: 'Keep-out around a hazard',
      says: 'Claims inside end and people there are told to come down. A lead widens it for one tree.',
      from: 'Common practice, no published number. A tall tree asks for more.',
    },
    overhead_apart_m: {
      name: 'Apart from ladder and saw work',
      says: 'Nobody claims a tree nearer than this to such work, unless a lead dealt it.',
      from: 'Common practice, no published number.',
    },
    quiet_minutes: {
      name: 'A lead is told of a silent phone after',
      says: 'Whoever has not been heard for that long comes first in the crew.',
      from: 'Common practice, no published number.',
    },
    withdraw_minutes: {
      name: 'A flag can be taken back for',
      says: 'By whoever raised it. Afterwards a lead looks at it.',
      from: 'Our own choice.',
    },
    undo_minutes: {
      name: 'A finished tree can be undone for',
      says: 'By whoever finished it. Afterwards a lead reopens it.',
      from: 'Our own choice.',
    },
    ...weatherRules,
  },
}

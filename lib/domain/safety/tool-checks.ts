/** The short look at a tool when it changes hands. One fault puts it out of use. */

import { commonPractice, published, type Source } from './source'

export const toolKinds = ['pruner', 'lopper', 'saw', 'pole_pruner', 'ladder', 'other'] as const
export type ToolKind = (typeof toolKinds)[number]

export const toolCheckCodes = [
  'blade_tight',
  'blade_sharp',
  'closes_and_locks',
  'handles_sound',
  'sheath_on',
  'pole_sound',
  'works_as_it_should',
  'steps_and_rails_sound',
  'third_leg_sound',
  'not_over_16_ft',
  'not_tipped_over',
] as const
export type ToolCheckCode = (typeof toolCheckCodes)[number]

export type ToolCheck = { code: ToolCheckCode; source: Source }

const oshaCard = published('OSHA QuickCard, tripod orchard ladders')

const checks: Record<ToolKind, readonly ToolCheck[]> = {
  pruner: common('closes_and_locks', 'blade_sharp', 'handles_sound'),
  lopper: common('handles_sound', 'blade_tight', 'blade_sharp'),
  saw: common('blade_tight', 'blade_sharp', 'handles_sound', 'sheath_on'),
  pole_pruner: common('pole_sound', 'closes_and_locks', 'blade_sharp'),
  ladder: [
    { code: 'steps_and_rails_sound', source: oshaCard },
    { code: 'third_leg_sound', source: oshaCard },
    { code: 'not_over_16_ft', source: published('Washington Admin. Code 296-307-05505(1)') },
    // After a tip-over it is looked at by a lead before anybody stands on it again.
    { code: 'not_tipped_over', source: oshaCard },
  ],
  other: common('works_as_it_should'),
}

export function checksFor(kind: ToolKind): readonly ToolCheck[] {
  return checks[kind]
}

function common(...codes: ToolCheckCode[]): ToolCheck[] {
  return codes.map((code) => ({ code, source: commonPractice }))
}

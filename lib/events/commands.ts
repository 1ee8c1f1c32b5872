/** The catalogue of commands: how urgent each is, and whether it may wait for signal. */

import * as shape from '@/lib/util/shape'

import { commandArgs } from './command-args'
import type { Instant } from './state'

export type CommandName = keyof typeof commandArgs
/** As it is asked for: what may be left out is filled in. */
export type ArgsOf<Name extends CommandName> = shape.In<(typeof commandArgs)[Name]>

export type CommandOf<Name extends CommandName> = {
  id: string
  name: Name
  orchardId: string
  /** Whose work it is. */
  personId: string
  args: shape.Out<(typeof commandArgs)[Name]>
}
/** One of them, told apart by its name. */
export type Command = { [Name in CommandName]: CommandOf<Name> }[CommandName]

export type Lane = 'urgent' | 'work' | 'photo'
export const lanes: readonly Lane[] = ['urgent', 'work', 'photo']

/**
 * What may be kept and sent later. The rest is for the referee to decide while one waits: it is
 * asked once, and dropped when no answer comes.
 */
const waitingLane = {
  stop_work: 'urgent',
  answer_stop: 'urgent',
  flag_tree: 'urgent',
  call_for_help: 'urgent',
  answer_call: 'urgent',
  end_call: 'urgent',
  answer_keep_out: 'urgent',
  answer_weather: 'urgent',
  write_weather: 'urgent',

  give_consent: 'work',
  sign_briefing: 'work',
  arrive: 'work',
  start_break: 'work',
  end_break: 'work',
  leave: 'work',
  check_equipment: 'work',
  take_tool: 'work',
  return_tool: 'work',
  fail_tool: 'work',
  clean_tool: 'work',
  leave_tree: 'work',
  release_tree: 'work',
  finish_tree: 'work',
  withdraw_flag: 'work',
  write_incident: 'work',
  confirm_flag: 'work',
  follow_up_flag: 'work',

  add_person: 'work',
  admit_person: 'work',
  give_briefing: 'work',
  set_off_today: 'work',
  mend_tool: 'work',
  take_back: 'work',
  mark_big_cuts: 'work',
  unmark_big_cuts: 'work',
  look_over: 'work',
  found_person: 'work',
  finish_brush: 'work',
  mark_brush: 'work',
  direct_brush: 'work',

  add_photo: 'photo',
} as const satisfies Partial<Record<CommandName, Lane>>

export type WaitingName = keyof typeof waitingLane

export function mayWait(name: CommandName): name is WaitingName {
  return Object.hasOwn(waitingLane, name)
}

/** Stops, calls, answers and hazards go before work, work before photos. */
export function laneOf(name: CommandName): Lane {
  return mayWait(name) ? waitingLane[name] : 'work'
}

/** Not of an orchard yet: they make or find the person. */
export type FromOutside = 'create_orchard' | 'redeem' | 'bring_in_orchard'

export function isFromOutside(name: CommandName): name is FromOutside {
  return name === 'create_orchard' || name === 'redeem' || name === 'bring_in_orchard'
}

/** Fills in what was left out. Throws on what no screen should ask for. */
export function commandOf<Name extends CommandName>(
  name: Name,
  args: ArgsOf<Name>,
  whose: { id: string; orchardId: string; personId: string }
): CommandOf<Name> {
  const argsShape: shape.Shape = commandArgs[name]
  const known = shape.read(argsShape, args)
  if (!known) throw new Error(`These are not arguments of ${name}.`)
  // The shape of this name gives the arguments of this name.
  return { ...whose, name, args: known.value as CommandOf<Name>['args'] }
}

/** When something was done, as the device says it. */
export function atOf(command: Command): Instant | null {
  return 'at' in command.args ? command.args.at : null
}

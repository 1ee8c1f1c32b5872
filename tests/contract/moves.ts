/** What somebody might send next: often allowed, often not. */

import type { CommandName } from '@/lib/events/commands'
import { missingOfPerson } from '@/lib/events/missing'
import type { Moves, Situation } from './draw'
import { movesOfCrew } from './moves-of-crew'
import { movesOfGround } from './moves-of-ground'
import { movesOfLeads } from './moves-of-leads'

export type Move = { name: CommandName; args: Record<string, unknown> }

/** How often each is tried, against one for the rest: a day is mostly work on trees. */
const often: Partial<Record<CommandName, number>> = {
  claim_tree: 16,
  finish_tree: 8,
  release_tree: 6,
  sign_briefing: 6,
  arrive: 4,
  check_equipment: 4,
  take_tool: 4,
  answer_stop: 6,
  end_break: 3,
  clean_tool: 3,
  flag_tree: 3,
  join_tree: 6,
  hand_over: 6,
  undo_tree: 4,
  withdraw_flag: 4,
  call_for_help: 3,
  end_call: 2,
  answer_keep_out: 2,
  answer_weather: 2,
  clear_flag: 2,
  change_keep_out: 2,

  resume_work: 5,
  give_briefing: 4,
  deal_trees: 6,
  set_off_today: 3,
  mend_tool: 3,
  write_weather: 3,
  make_exception: 4,
  open_shift: 3,
  close_shift: 5,
  close_round: 5,
  open_round: 5,
  change_orchard: 3,
  look_over: 4,
  take_brush: 5,
  finish_brush: 6,
  leave_tree: 6,
  end_claim: 2,
  answer_call: 3,
  enter_work: 4,
  enter_attendance: 4,
}

export const moves: Moves = { ...movesOfLeads, ...movesOfGround, ...movesOfCrew }
const everything = lotOf(moves)
const ofCrew = lotOf(movesOfCrew)

function lotOf(some: Moves): CommandName[] {
  const names = Object.keys(some) as CommandName[]
  return names.flatMap((name) => Array.from({ length: often[name] ?? 1 }, () => name))
}

/** What helps against what is missing. */
const cures: Record<string, CommandName | readonly CommandName[]> = {
  shift_not_open: ['schedule_shift', 'write_briefing', 'open_shift', 'open_shift'],
  stopped: 'resume_work',
  stop_not_answered: 'answer_stop',
  not_arrived: 'arrive',
  on_break: 'end_break',
  consent_missing: 'give_consent',
  briefing_not_given: 'give_briefing',
  briefing_not_signed: 'sign_briefing',
  equipment_not_checked: 'check_equipment',
  no_tool_in_hand: 'take_tool',
  tool_failed: 'return_tool',
  tool_not_clean: 'clean_tool',
  holds_another: ['finish_tree', 'finish_tree', 'finish_brush', 'release_tree', 'hand_over'],
}

/** Every other time something sensible; volunteers mostly leave alone what is a lead's. */
export function drawMove(situation: Situation & { isLead: boolean }): Move | null {
  const { state, personId, draw, isLead } = situation
  const [missing] = missingOfPerson(state, personId)
  const sensible = draw.of([missing ? cures[missing.code] : 'claim_tree'].flat())
  const name =
    draw.chance(2) && sensible ? sensible : draw.of(isLead || draw.chance(20) ? everything : ofCrew)
  const args = name && moves[name]?.(situation)
  return name && args ? { name, args } : null
}

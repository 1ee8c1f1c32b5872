/** Why the referee said no. Begins with what happened, ends with the way on. */

import type { RefusalDetail } from '../refusal'
import { groundRefusals } from './ground-refusals'
import { refusalsOfRooms } from './refusals-of-rooms'

type Detail = RefusalDetail

export const refusals = {
  // the day
  shift_not_open: (_: Detail) => 'The shift is not open. Your lead opens it.',
  stopped: (_: Detail) => 'Work is stopped. Wait until a lead lets it go on.',
  stop_not_answered: ({ whose }: Detail) =>
    whose
      ? `${whose} has not answered the stop. Answer it first.`
      : 'You have not answered the stop. Answer it first.',

  thunder: ({ until }: Detail) =>
    `Thunder was heard. Nobody works${until ? ` before ${until}` : ' for 30 minutes after the last'}. Go into a building or a closed car.`,
  too_windy: (_: Detail) =>
    'Gusts are above this orchard’s limit for work. Wait until a lead has measured again.',
  too_hot: (_: Detail) =>
    'It feels hotter than this orchard’s limit for work. Rest in the shade and drink; a lead measures again.',
  dark: (_: Detail) =>
    'The sun is not up at the orchard, and work is for daylight. A lead who has lamps there can make an exception.',
  not_off: ({ species }: Detail) =>
    `Nothing puts off ${species ?? 'these trees'} now. No exception is needed.`,
  exception_needed: ({ species }: Detail) =>
    `It is not the season of ${species ?? 'these trees'}. Make an exception, and say why.`,

  // ready
  not_arrived: ({ whose }: Detail) =>
    whose
      ? `${whose} is not counted in yet. Count them first.`
      : 'You are not counted in yet. Say “I am here” first.',
  already_here: ({ whose }: Detail) =>
    whose ? `${whose} is counted in already. Go on.` : 'You are counted in already. Go on.',
  on_break: ({ whose }: Detail) =>
    whose ? `${whose} is on a break. End it first.` : 'You are on a break. End it first.',
  not_on_break: ({ whose }: Detail) =>
    whose ? `${whose} is not on a break. Go on.` : 'You are not on a break. Go on.',
  already_left: ({ whose }: Detail) =>
    whose
      ? `${whose} has gone home. Count them in again first.`
      : 'You are counted out. Say “I am back” first.',
  consent_missing: ({ whose }: Detail) =>
    whose
      ? `The consent of ${whose} is missing. Read it and agree.`
      : 'Your consent for the season is missing. Read it and agree.',
  consent_changed: (_: Detail) => 'The consent has a new text. Read it again and agree.',
  guardian_must_consent: ({ whose }: Detail) =>
    whose
      ? `${whose} is under age. The parent or guardian agrees.`
      : 'You are under age. Your parent or guardian agrees.',
  adult_missing: ({ whose, person }: Detail) =>
    `${person ? `${person},` : 'The adult'} who answers for ${whose ?? 'you'}${person ? ',' : ''} is not here. Wait, or ask your lead.`,
  briefing_missing: (_: Detail) => 'No briefing is written for this shift. A lead writes it first.',
  briefing_not_given: ({ whose }: Detail) =>
    whose
      ? `${whose} is not briefed yet. A lead gives the briefing.`
      : 'The briefing is not given to you yet. Listen to your lead.',
  briefing_not_signed: ({ whose }: Detail) =>
    whose
      ? `${whose} has not signed the briefing. Sign it first.`
      : 'The briefing is not signed. Sign it first.',
  briefing_changed: (_: Detail) =>
    'The briefing has changed meanwhile. Hear what is new, then sign.',
  equipment_not_checked: ({ whose }: Detail) =>
    whose
      ? `The protection of ${whose} is not checked. Check it first.`
      : 'Your protection is not checked. Check it first.',
  no_tool_in_hand: ({ whose }: Detail) =>
    whose
      ? `${whose} has no tool in hand. Take one from the bench.`
      : 'No tool is in your hand. Take one from the bench.',
  no_ladder_in_hand: (_: Detail) => 'None of you has a ladder. Take one, or a lower tree.',
  no_saw_in_hand: (_: Detail) => 'None of you has a saw. Take one, or a tree without saw work.',
  tool_failed: ({ tool }: Detail) =>
    `${tool ?? 'A tool in your hand'} is out of use. Give it back and take another.`,
  tool_not_clean: ({ tool }: Detail) =>
    `${tool ?? 'A tool in your hand'} is not clean. Wipe it and say so.`,
  visitors_do_not_prune: ({ whose }: Detail) =>
    `${whose ? `${whose} is` : 'You are'} here as a visitor. Ask a lead to change that.`,

  // the tree
  tree_not_standing: ({ tree }: Detail) =>
    `${tree ?? 'This tree'} is no longer standing. Take another.`,
  tree_not_in_round: ({ tree }: Detail) =>
    `${tree ?? 'This tree'} is not pruned in this round. Take another.`,
  tree_done: ({ tree }: Detail) => `${tree ?? 'This tree'} is done already. Take another.`,
  tree_left_out: ({ tree }: Detail) =>
    `${tree ?? 'This tree'} is left out of this round. Take another.`,
  tree_held: ({ tree, person, take }: Detail) =>
    `${person ?? 'Somebody'} holds ${tree ?? 'this tree'}. ${takeOr(take)}`,
  dealt_to_another: ({ tree, person, take }: Detail) =>
    `${tree ?? 'This tree'} is dealt to ${person ?? 'somebody else'}. ${takeOr(take)}`,
  arborist_flag: ({ tree }: Detail) =>
    `${tree ?? 'This tree'} is flagged for a licensed arborist. Keep away and take another.`,
  inside_keep_out: ({ tree }: Detail) =>
    `${tree ?? 'This tree'} stands too close to a flagged one. Keep away and take another.`,
  species_off: ({ species, reason }: Detail) =>
    `No ${species ?? 'trees of this kind'} today${reason ? `, because ${reason}` : ''}. Take another kind.`,
  ladders_off: ({ reason }: Detail) =>
    `No ladders today${reason ? `, because ${reason}` : ''}. Take a tree you reach from the ground.`,
  skill_missing: ({ skill, whose }: Detail) =>
    `${whose ? `${whose} lacks` : 'You lack'} the skill ${skill ?? 'this tree asks for'}. Take another tree or ask your lead.`,
  minor_ladder_saw: ({ whose }: Detail) =>
    `${whose ? `${whose} is` : 'You are'} under age: no ladder and no saw. Take a tree for pruner and lopper.`,
  not_marked: ({ tree }: Detail) =>
    `Nobody has marked the big cuts on ${tree ?? 'this tree'}. Ask a lead to mark it, or help somebody.`,
  works_next_to_it: ({ tree, person }: Detail) =>
    `${person ?? 'Somebody'} works with ladder or saw beside ${tree ?? 'this tree'}. Take one further away.`,
  disease_not_dealt: ({ tree }: Detail) =>
    `${tree ?? 'This tree'} is flagged for disease. Only a lead deals it; take another.`,
  height_unknown: ({ tree }: Detail) =>
    `Nobody has measured ${tree ?? 'this tree'}: no ladder. Prune what you reach from the ground.`,
  holds_another: ({ tree, row, whose }: Detail) =>
    `${whose ? `${whose} holds` : 'You hold'} ${tree ?? row ?? 'another tree'} already. Finish or leave that one first.`,
  two_people_needed: (_: Detail) => 'Ladder or saw takes two people. Say who works with you.',
  helper_not_ready: ({ person }: Detail) =>
    `${person ?? 'Your helper'} is not ready yet. Choose somebody else, or wait.`,
  buddy_not_here: ({ person }: Detail) =>
    `${person ?? 'Your buddy'} is not here. Name somebody who is.`,
  buddy_not_fit: ({ person }: Detail) =>
    `${person ?? 'This person'} cannot be the buddy. Name an adult of the crew.`,
  tree_in_progress: ({ tree }: Detail) => `${tree ?? 'This tree'} is in progress. Deal another.`,
  row_held: ({ row, person }: Detail) =>
    `${person ?? 'Somebody'} hauls ${row ?? 'this row'} already. Join them, or take another row.`,
  nothing_to_haul: (_: Detail) => 'No cut wood lies in this row. Take another.',
  tree_not_done: ({ tree }: Detail) =>
    `${tree ?? 'This tree'} is not done, or not any more. Look at it again when it is.`,
  worked_on_it: ({ tree }: Detail) =>
    `You worked on ${tree ?? 'this tree'}. Another lead looks it over.`,
  claim_over: (_: Detail) => 'This claim is over. Look at the tree again.',
  not_in_claim: ({ whose }: Detail) =>
    `${whose ? `${whose} is` : 'You are'} not at this tree. Nothing to leave.`,
  holder_hands_over: (_: Detail) =>
    'You hold this tree. Hand it over, finish it or leave it half done.',
  nothing_to_undo: ({ tree }: Detail) =>
    `Nothing to undo on ${tree ?? 'this tree'}. Look at it again.`,
  not_holder: ({ tree }: Detail) =>
    `You do not hold ${tree ?? 'this tree'} any more. What you did is kept.`,

  // people and time
  not_admitted: ({ whose }: Detail) =>
    whose
      ? `${whose} is not let in yet. A lead admits them.`
      : 'You are not let in yet. Tell your lead your name.',
  person_removed: ({ whose }: Detail) =>
    whose
      ? `${whose} is not in this orchard any more.`
      : 'You are not in this orchard any more. Talk to your lead.',
  too_late_to_undo: ({ until }: Detail) =>
    `Too late to undo${until ? `, it was possible until ${until}` : ''}. Ask a lead to reopen it.`,
  too_late_to_withdraw: ({ until }: Detail) =>
    `Too late to take it back${until ? `, it was possible until ${until}` : ''}. A lead looks at it.`,

  flag_over: (_: Detail) => 'This flag is over. Somebody withdrew or cleared it.',
  only_manager_clears: (_: Detail) =>
    'A hazard stays until the arborist has been. Then a manager clears it.',
  only_manager_narrows: (_: Detail) =>
    'A keep-out only gets wider. Ask a manager to make it narrower.',
  not_yours: (_: Detail) => 'Somebody else raised this flag. Only they or a lead take it back.',
  not_yours_to_give: (_: Detail) => 'Only a manager may do this for that person. Ask a manager.',
  not_to_oneself: (_: Detail) => 'Nobody grants a skill to themselves. Ask another lead.',
  last_manager: (_: Detail) => 'The last manager stays. Make somebody else a manager first.',
  handed_in_before: (_: Detail) => 'This work is handed in already. Nothing is lost.',
  accepted_before: (_: Detail) => 'Another lead has accepted this already.',
  no_picture: (_: Detail) => 'There is no picture from above yet. Choose one first.',
  photo_too_large: (_: Detail) => 'The photo is too large. Take another.',
  photo_not_plain: (_: Detail) => 'The photo still says where or when it was taken. Take another.',

  orchard_here: (_: Detail) => 'This orchard is here already. Nothing was brought in.',
  archive_incomplete: (_: Detail) => 'Some of the archive did not arrive. Bring it in again.',
  archive_newer: (_: Detail) =>
    'A newer Rowcall wrote this archive. Update this one first, then bring it in again.',
  archive_damaged: (_: Detail) =>
    'The archive is damaged. Nothing was brought in; take out another one.',

  // rounds and shifts
  no_round: (_: Detail) => 'No round is open. A manager opens it first.',
  round_closed: (_: Detail) => 'This round is closed. Choose another, or open a new one.',
  shift_open: (_: Detail) => 'A shift is open already. Close it first.',
  shift_closed: (_: Detail) => 'This shift is closed. Plan a new one.',
  shift_cancelled: (_: Detail) => 'This shift was called off. Plan a new one.',
  rows_wrong: (_: Detail) =>
    'Some rows are wrong. Nothing was brought in; mend them and try again.',

  ...groundRefusals,

  // from paper
  not_in_shift: (_: Detail) => 'No shift was on at this time. Look at the day and the hour again.',
  already_entered: ({ tree, whose }: Detail) =>
    `${tree ?? 'This'} is entered already${whose ? ` for ${whose}` : ''}. Nothing is counted twice.`,
  left_before: ({ whose }: Detail) =>
    `${whose ?? 'This person'} left before that. Look at the times again.`,
  leaving_missing: ({ whose }: Detail) =>
    `That shift is closed. Write when ${whose ?? 'the person'} left, too.`,

  // closing
  still_signed_in: ({ person }: Detail) =>
    `${person ?? 'Somebody'} is not counted out. Count them, or say why.`,
  trees_held: ({ trees, tree, person }: Detail) =>
    `${person ?? 'Somebody'} still holds ${trees ?? tree ?? 'a tree'}. End it, or say why.`,
  tools_out: ({ tool, person }: Detail) =>
    `${tool ?? 'A tool'} is still with ${person ?? 'somebody'}. Take it back, or say why.`,

  ...refusalsOfRooms,

  // codes
  code_wrong: (_: Detail) => 'This code is not known. Scan it again, or ask your lead.',
  code_expired: (_: Detail) => 'This code has run out. Ask your lead for a new one.',
  code_used: (_: Detail) => 'This code was used already. Ask your lead for a new one.',

  // tools
  no_such_tool: ({ tool }: Detail) =>
    `${tool ?? 'This tool'} is not on the list. Look at its label again.`,
  tool_held: ({ tool, person }: Detail) =>
    `${person ?? 'Somebody'} has ${tool ?? 'this tool'}. Take another, or ask for it.`,
  not_in_hand: ({ tool }: Detail) => `${tool ?? 'This tool'} is not in your hand. Take it first.`,
}

function takeOr(take: string | undefined): string {
  return take ? `Take ${take}.` : 'Take another.'
}

/** Why the referee said no. Begins with what happened, ends with the way on. */

import type { RefusalDetail } from '../refusal'

type Detail = RefusalDetail

export const refusals = {
  // the day
  shift_not_open: (_: Detail) => 'The shift is not open. Your lead opens it.',
  stopped: (_: Detail) => 'Work is stopped. Wait until a lead lets it go on.',
  stop_not_answered: ({ person }: Detail) =>
    person
      ? `${person} has not answered the stop. Answer it first.`
      : 'You have not answered the stop. Answer it first.',

  // ready
  not_arrived: ({ person }: Detail) =>
    person
      ? `${person} is not counted in yet. Say “here” first.`
      : 'You are not counted in yet. Say “I am here” first.',
  on_break: ({ person }: Detail) =>
    person ? `${person} is on a break. End it first.` : 'You are on a break. End it first.',
  already_left: ({ person }: Detail) =>
    person
      ? `${person} has gone home. Count them in again first.`
      : 'You are counted out. Say “I am back” first.',
  consent_missing: ({ person }: Detail) =>
    person
      ? `Consent of ${person} is missing. Read it and agree.`
      : 'Your consent for the season is missing. Read it and agree.',
  adult_missing: ({ person }: Detail) =>
    person
      ? `No adult who answers for ${person} is here. Ask your lead.`
      : 'The adult who answers for you is not here. Ask your lead.',
  briefing_not_given: ({ person }: Detail) =>
    person
      ? `${person} is not briefed yet. A lead gives the briefing.`
      : 'The briefing is not given to you yet. Listen to your lead.',
  briefing_not_signed: ({ person }: Detail) =>
    person
      ? `${person} has not signed the briefing. Sign it first.`
      : 'The briefing is not signed. Sign it first.',
  equipment_not_checked: ({ person }: Detail) =>
    person
      ? `Protection of ${person} is not checked. Check it first.`
      : 'Your protection is not checked. Check it first.',
  no_tool_in_hand: (_: Detail) => 'No tool is in your hand. Take one from the bench.',
  tool_failed: ({ tool }: Detail) =>
    `${tool ?? 'A tool in your hand'} is out of use. Give it back and take another.`,
  tool_not_clean: ({ tool }: Detail) =>
    `${tool ?? 'A tool in your hand'} is not clean. Wipe it and say so.`,

  // the tree
  tree_not_standing: ({ tree }: Detail) =>
    `${tree ?? 'This tree'} does not stand any more. Take another.`,
  tree_not_in_round: ({ tree }: Detail) =>
    `${tree ?? 'This tree'} is not pruned in this round. Take another.`,
  tree_done: ({ tree }: Detail) => `${tree ?? 'This tree'} is done already. Take another.`,
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
  skill_missing: ({ skill, person }: Detail) =>
    `${person ? `${person} lacks` : 'You lack'} the skill ${skill ?? 'this tree asks for'}. Take another tree or ask your lead.`,
  minor_ladder_saw: ({ person }: Detail) =>
    `${person ? `${person} is` : 'You are'} under age: no ladder and no saw. Take a tree for pruner and lopper.`,
  not_marked: ({ tree }: Detail) =>
    `Nobody has marked the big cuts on ${tree ?? 'this tree'}. Ask a lead to mark it, or help somebody.`,
  works_next_to_it: ({ tree, person }: Detail) =>
    `${person ?? 'Somebody'} works with ladder or saw beside ${tree ?? 'this tree'}. Take one further away.`,
  disease_not_dealt: ({ tree }: Detail) =>
    `${tree ?? 'This tree'} is flagged for disease. Only a lead deals it; take another.`,
  holds_another: ({ tree, person }: Detail) =>
    `${person ? `${person} holds` : 'You hold'} ${tree ?? 'another tree'} already. Finish or leave that one first.`,
  two_people_needed: (_: Detail) => 'Ladder or saw takes two people. Say who works with you.',
  helper_not_ready: ({ person }: Detail) =>
    `${person ?? 'Your helper'} is not ready yet. Choose somebody else, or wait.`,
  tree_in_progress: ({ tree }: Detail) => `${tree ?? 'This tree'} is in progress. Deal another.`,
  not_holder: ({ tree }: Detail) =>
    `You do not hold ${tree ?? 'this tree'} any more. What you did is kept.`,

  // people and time
  not_admitted: ({ person }: Detail) =>
    person
      ? `${person} is not let in yet. A lead admits them.`
      : 'You are not let in yet. Tell your lead your name.',
  person_removed: ({ person }: Detail) =>
    person
      ? `${person} is not in this orchard any more.`
      : 'You are not in this orchard any more. Talk to your lead.',
  too_late_to_undo: ({ until }: Detail) =>
    `Too late to undo${until ? `, it went until ${until}` : ''}. Ask a lead to reopen it.`,
  too_late_to_withdraw: ({ until }: Detail) =>
    `Too late to take it back${until ? `, it went until ${until}` : ''}. A lead looks at it.`,

  // closing
  still_signed_in: ({ person }: Detail) =>
    `${person ?? 'Somebody'} is not counted out. Count them, or say why.`,
  trees_held: ({ trees, tree, person }: Detail) =>
    `${person ?? 'Somebody'} still holds ${trees ?? tree ?? 'a tree'}. End it, or say why.`,
  tools_out: ({ tool, person }: Detail) =>
    `${tool ?? 'A tool'} is still with ${person ?? 'somebody'}. Take it back, or say why.`,

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

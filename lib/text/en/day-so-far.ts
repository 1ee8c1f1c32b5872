/** What needs somebody, and what goes on: one plain sentence each. `who` is a list of names, `trees` of tags. */

import { plural } from './plural'

export const daySoFar = {
  title: 'What needs somebody',
  none: 'Nothing waits for anybody.',
  stopped: (where: string, name: string) => `Work is stopped ${where}, by ${name}.`,
  everywhere: 'in the whole orchard',
  inBlock: (block: string) => `in block ${block}`,
  notAnsweredYet: (count: number) =>
    plural(count, '1 person has not answered.', `${count} people have not answered.`),
  allAnswered: 'Everybody has answered. A lead says when work goes on.',
  nobodyComes: 'Nobody is coming yet.',
  comes: (name: string) => `${name} is coming.`,
  still_inside: (count: number, who: string) =>
    plural(
      count,
      `${who} is not known to be out of the keep-out.`,
      `${who} are not known to be out of the keep-out.`
    ),
  to_look_over: (count: number, trees: string) =>
    plural(
      count,
      `${trees} is done and waits to be looked over.`,
      `${count} trees are done and wait to be looked over: ${trees}.`
    ),
  hazard: (tag: string, sign: string) => `Danger at ${tag}: ${sign}`,
  since: (time: string, name: string) => `Seen ${time} by ${name}.`,
  alone_with_ladder: (name: string, tag: string) => `${name} is alone with a ladder at ${tag}.`,
  aloneNote: 'The helper or buddy is not there.',
  waits_for_lead: (name: string, tag: string) => `${name} flagged ${tag} and waits for you there.`,
  not_heard: (name: string, duration: string) => `${name} has not been heard from for ${duration}.`,
  not_heard_today: (name: string) => `${name} has not been heard from in this shift.`,
  many_not_heard: (count: number, who: string) =>
    `${count} people have not been heard from for a while: ${who}.`,
  manyNotHeardNote: 'Each stands in the crew beside the map. Look for who is at a tree.',
  lastAt: (tag: string) => `Last at ${tag}.`,
  notAtTree: 'Not at a tree.',
  not_let_in: (count: number, who: string) =>
    plural(count, `${who} waits to be let in.`, `${who} wait to be let in.`),
  not_answered: (count: number, who: string) =>
    plural(
      count,
      `${who} has not answered that work goes on.`,
      `${who} have not answered that work goes on.`
    ),
  not_briefed: (count: number, who: string) =>
    plural(count, `${who} is not briefed.`, `${who} are not briefed.`),
  without_equipment: (count: number, who: string) =>
    plural(count, `${who} has not checked protection.`, `${who} have not checked protection.`),
  without_tool: (count: number, who: string) =>
    plural(count, `${who} has no fit, clean tool.`, `${who} have no fit, clean tool.`),
  lacks_other: (count: number, who: string) =>
    plural(count, `${who} is not ready yet.`, `${who} are not ready yet.`),
  long_at_tree: (name: string, where: string, duration: string) =>
    `${name} has been ${where} for ${duration}.`,
  atTree: (tag: string) => `at ${tag}`,
  atRow: 'at a row',
  disease_to_judge: (count: number, trees: string) =>
    plural(
      count,
      `Disease is suspected on ${trees}. A lead decides.`,
      `Disease is suspected on ${count} trees: ${trees}. A lead decides.`
    ),
  without_tree: (count: number, who: string) =>
    plural(count, `${who} is ready and has no tree.`, `${who} are ready and have no tree.`),
  for_arborist: (count: number, trees: string) =>
    plural(
      count,
      `${trees} waits for a licensed arborist.`,
      `${count} trees wait for a licensed arborist: ${trees}.`
    ),
  half_done: (count: number, trees: string) =>
    plural(
      count,
      `${trees} is half done, and nobody is at it.`,
      `${count} trees are half done, and nobody is at them: ${trees}.`
    ),
  on_brush: (count: number, who: string) =>
    plural(count, `${who} hauls brush.`, `${who} haul brush.`),
  andMore: (count: number) => `${count} more`,
}

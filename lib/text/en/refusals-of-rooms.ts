/** Why a round does not close, and why nobody is forgotten yet. */

import type { RefusalDetail as Detail } from '../refusal'

export const refusalsOfRooms = {
  shifts_planned: (_: Detail) =>
    'Shifts are planned in this round. Say that they are called off, then close it.',

  // forgetting
  forgotten_before: (_: Detail) => 'This name is forgotten already. Nothing is left to do.',
  not_yourself: (_: Detail) => 'Nobody forgets themselves. Ask another manager.',
  still_here: ({ whose }: Detail) =>
    `${whose ?? 'This person'} is counted in. Count them out first.`,
  not_found_yet: ({ whose }: Detail) =>
    `Nobody has said that ${whose ?? 'this person'} is found. Find them first.`,
  still_at_tree: ({ tree, row, whose }: Detail) =>
    `${whose ?? 'This person'} is still at ${tree ?? row ?? 'a tree'}. End that first.`,
  still_has_tools: ({ tool, whose }: Detail) =>
    `${whose ?? 'This person'} still has ${tool ?? 'a tool'}. Take it back first.`,
  call_open: ({ whose }: Detail) =>
    `A call for help is open, by or about ${whose ?? 'this person'}. End it first.`,
  work_handed_in: ({ whose }: Detail) =>
    `${whose ?? 'This person'} handed in work that nobody has accepted. Accept it first.`,
  answers_for: ({ person, whose }: Detail) =>
    `${whose ?? 'This person'} answers for ${person ?? 'somebody under age'}. Name another adult first.`,
}

/** Why trees, blocks and cultivars cannot be changed like that. */

import type { RefusalDetail } from '../refusal'

type Detail = RefusalDetail

export const groundRefusals = {
  trees_in_progress: ({ trees }: Detail) =>
    `Somebody is at ${trees ?? 'one of these trees'}. Nothing was changed. Wait until they are done.`,
  rows_held: ({ trees }: Detail) =>
    `Somebody hauls brush in the row of ${trees ?? 'these trees'}. Nothing was changed. Wait until it is hauled.`,
  trees_dealt: ({ trees }: Detail) =>
    `${trees ?? 'Some of these trees'}: dealt to somebody who may be on the way. Nothing was changed. Take them back first.`,
  trees_flagged: ({ trees }: Detail) =>
    `${trees ?? 'Some of these trees'}: a flag is open. Nothing was changed. Clear or withdraw it first.`,
  trees_done: ({ trees }: Detail) =>
    `${trees ?? 'Some of these trees'}: done in this round already. Nothing was changed. Leave them out of the choice.`,
  other_species: ({ trees, species }: Detail) =>
    `This cultivar is for ${species ?? 'another species'}, and ${trees ?? 'some of these trees'} are not. Nothing was changed. Choose the species with it.`,
  places_taken: ({ trees }: Detail) =>
    `Two trees would stand in one place: ${trees ?? 'look at the numbers'}. Nothing was changed. Give another row or place.`,
  code_taken: (_: Detail) => 'Another block has these letters. Choose others.',
  block_has_history: (_: Detail) =>
    'Something is recorded in this block, so it stays. Set its trees to removed instead.',
  cultivar_known: (_: Detail) =>
    'This species has a cultivar of that name already. Change that one instead.',
  cultivar_in_use: ({ trees }: Detail) =>
    `${trees ?? 'Some trees'}: of this cultivar. Give them another first.`,
}

/** Why a topic is proposed, in one language; and of that what the crew is told too. */

import type { Proposal, Reason } from '@/lib/domain/safety/briefing-proposals'
import type { OffReason } from '@/lib/events/state'
import type { LeadMessages, Messages } from '@/lib/text/messages'
import { speciesWords } from '@/lib/text/species'
import { signWords } from '../tree/flag-words'

export type Spoken = { words: Messages; lead: LeadMessages }

export type Named = { tag: (tree: number) => string; block: (no: number) => string }

export function reasonWords(reason: Reason, { words, lead }: Spoken, named: Named): string {
  const { proposals: text } = lead
  switch (reason.kind) {
    case 'always':
      return text.always
    case 'off':
      return text.off(
        reason.what === 'ladder' ? text.ladders : speciesWords(words, reason.what).many,
        // A reason of a newer app is said as it is written.
        words.things.offReason[reason.because as OffReason] ?? reason.because
      )
    case 'ladder_trees':
      return text.ladderTrees(reason.count)
    case 'saw_trees':
      return text.sawTrees(reason.count)
    case 'minors':
      return text.minors(reason.count)
    case 'hazard':
      return text.hazard(
        signWords(words, 'arborist', reason.sign),
        reason.trees.map(named.tag).join(', ')
      )
    case 'disease':
      return text.disease(named.block(reason.block), reason.trees)
    case 'heat_wave':
      return text.heatWave
    case 'new_in_heat':
      return text.newInHeat(reason.count)
    case 'round':
      return reason.round === 'summer' ? text.round.summer : text.round.winter
  }
}

/** Where it is and what is off. Never who is under age, nor what only a lead counts. */
const forTheCrew: readonly Reason['kind'][] = ['off', 'hazard', 'disease', 'heat_wave']

export function factsWords({ reasons }: Proposal, spoken: Spoken, named: Named): string {
  return reasons
    .filter(({ kind }) => forTheCrew.includes(kind))
    .map((reason) => reasonWords(reason, spoken, named))
    .join(' ')
}

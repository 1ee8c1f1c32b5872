/** Why a tree is on the list, in a few words. */

import type { ToScout } from '@/lib/domain/disease/scouting'
import type { LeadMessages } from '@/lib/text/messages'

export function whyScouted(
  { disease }: Pick<LeadMessages, 'disease'>,
  { ring, sickNeighbours, kin }: ToScout
): string {
  const near = ring === 1 ? disease.sickBeside(sickNeighbours) : disease.oneFurther
  return kin === 'same_kind' ? near : `${near}, ${disease.kin[kin]}`
}

/** How large things are on a label, in millimetres. */

import type { LabelSheet } from '@/lib/domain/orchard/label-sheets'

/** White round what is printed, since no printer hits a label exactly. */
export const paddingMm = 2

/** A bold letter or digit of the tag is at most so wide, in its own size. */
const letterWidth = 0.62

export function labelSizes(
  { widthMm, heightMm }: Pick<LabelSheet, 'widthMm' | 'heightMm'>,
  tag: string
) {
  const codeMm = Math.min(heightMm - 2 * paddingMm, widthMm * 0.42)
  const roomMm = widthMm - codeMm - 3 * paddingMm
  return {
    codeMm,
    tagMm: Math.min(heightMm * 0.3, roomMm / (tag.length * letterWidth)),
    wordsMm: Math.min(6, Math.max(2.6, heightMm * 0.09)),
  }
}

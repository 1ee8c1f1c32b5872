/** Hazards that a file told of, at trees that are in the orchard now and closed for none yet. */

import type { ArgsOf } from '@/lib/events/commands'
import type { View } from '@/lib/hooks'

import type { KnownHazard } from './bring-in-draft'

export type HazardHere = KnownHazard & { tree: number }

export function hazardsHere(
  { sheet, state }: Pick<View, 'sheet' | 'state'>,
  hazards: readonly KnownHazard[]
): HazardHere[] {
  if (!sheet || hazards.length === 0) return []
  const codes = new Map(sheet.blocks.map(({ no, code }) => [no, code]))
  const byPlace = new Map(
    sheet.trees
      .filter(({ life }) => life !== 'removed')
      .map(({ no, block, row, place }) => [`${codes.get(block)}|${row}|${place}`, no])
  )
  const closed = new Set(
    Object.values(state?.flags ?? {})
      .filter(({ kind }) => kind === 'arborist')
      .map(({ tree }) => tree)
  )
  return hazards.flatMap((hazard) => {
    const tree = byPlace.get(`${hazard.block}|${hazard.row}|${hazard.place}`)
    return tree === undefined || closed.has(tree) ? [] : [{ ...hazard, tree }]
  })
}

/** What may come down or kill where one stands closes the tree as danger now, as a flag from the field does. */
export function flagOf({ tree, sign, note }: HazardHere): ArgsOf<'flag_tree'> {
  const isNow = sign === 'hanging_limb' || sign === 'power_line'
  return { tree, kind: 'arborist', sign, severity: isNow ? 'danger_now' : 'high', note }
}

/** A layout as the referee takes it in. */

import { toE7 } from '@/lib/domain/orchard/ellipsoid'
import type { Layout } from '@/lib/domain/orchard/layout'

type Named = { code: string; name: string; species: string }

export function laidOutArgs({ code, name, species }: Named, layout: Layout) {
  const first = layout.trees.find(({ row, place }) => row === 1 && place === 1)?.position
  const { rowSpacingM, treeSpacingM } = layout.spacing
  return {
    blocks: [
      {
        code,
        name,
        rowSpacingM: centimetres(rowSpacingM),
        treeSpacingM: centimetres(treeSpacingM),
        bearingDeg: Number(layout.bearingDeg.toFixed(2)) % 360,
        ...(first && { firstLatE7: toE7(first.lat), firstLonE7: toE7(first.lon) }),
      },
    ],
    cultivars: [],
    trees: layout.trees.map(({ row, place, position, isGap }) => ({
      block: code,
      row,
      place,
      species,
      latE7: toE7(position.lat),
      lonE7: toE7(position.lon),
      ...(isGap && { life: 'gap' }),
    })),
  }
}

function centimetres(metres: number): number {
  return Number(metres.toFixed(2))
}

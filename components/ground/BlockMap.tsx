'use client'

import { useMemo } from 'react'

import { placeAt } from '@/lib/domain/orchard/ellipsoid'
import { sidesOf } from '@/lib/domain/orchard/outline'
import { positionText } from '@/lib/domain/orchard/read-position'
import type { Position } from '@/lib/domain/orchard/types'
import { useSelect } from '@/lib/hooks'
import { groupBy } from '@/lib/util/group-by'
import { useLeadWords } from '../crew/use-lead-words'
import { useFormat } from '../layout/use-format'
import { useWords } from '../layout/Words'
import { LayoutMap } from '../map/LayoutMap'
import type { LayoutMode } from '../map/layout-map-props'
import { linesOfCorners, positionsIn, withCornerAdded, withCornerAt } from './new-block'
import type { NewBlockNow } from './use-new-block'

type BlockMapProps = {
  now: NewBlockNow
  mode: LayoutMode
  /** The line of the corner in hand. */
  chosen: number | null
  onChoose: (line: number) => void
}

/** The block as it would be, drawn while one types; corners are dragged, places left empty. */
export function BlockMap({ now, mode, chosen, onChoose }: BlockMapProps) {
  const { common } = useWords()
  const { ground } = useLeadWords()
  const format = useFormat()
  const sheet = useSelect((view) => view.sheet)
  const { block, layout, numbers, change } = now
  const corners = useMemo(() => positionsIn(block), [block])
  const lines = linesOfCorners(block)
  const rows = useMemo(
    () => (layout ? [...groupBy(layout.trees, ({ row }) => row).values()] : noRows),
    [layout]
  )
  const sideWords = useMemo(
    () => (corners.length < 2 ? [] : sidesOf(corners).map(({ metres }) => format.distance(metres))),
    [corners, format]
  )
  const others = useMemo(
    () => (sheet?.trees ?? []).flatMap(({ position }) => position ?? []),
    [sheet]
  )
  const sum = layout ? ground.inRows(layout.rows, layout.trees.length - layout.gaps) : ''
  const chosenCorner = lines.indexOf(chosen ?? -1)
  // A place that is tapped: half the way to its neighbours on every side.
  const reachM = Math.min(numbers.treeSpacingM ?? 4, numbers.rowSpacingM ?? 4) / 2

  return (
    <LayoutMap
      corners={corners}
      chosen={chosenCorner < 0 ? null : chosenCorner}
      rows={rows}
      sideWords={sideWords}
      others={others}
      north={ground.north}
      startAt={corners[0] ?? others[0] ?? null}
      mode={mode}
      words={{ label: ground.mapLabel(sum), zoomIn: common.zoomIn, zoomOut: common.zoomOut }}
      onChoose={(corner) => onChoose(lines[corner] ?? 0)}
      onMove={(corner, to) => change(withCornerAt(block, lines[corner] ?? 0, positionText(to)))}
      onAdd={(at) => change(withCornerAdded(block, at))}
      onPlace={(at) => change({ empty: toggled(block.empty, at, reachM) })}
      onArea={(shape) => change({ empty: [...block.empty, shape] })}
    />
  )
}

const noRows: readonly never[] = []

/** A second tap on an empty place fills it again. */
function toggled(
  empty: readonly (readonly Position[])[],
  at: Position,
  reachM: number
): readonly (readonly Position[])[] {
  const square = [45, 135, 225, 315].map((bearingDeg) =>
    placeAt(at, { metres: reachM * Math.SQRT2 * 0.98, bearingDeg })
  )
  const rest = empty.filter((shape) => shape.length !== 4 || !holds(shape, at))
  return rest.length === empty.length ? [...empty, square] : rest
}

/** Of a square with its sides to north and east. */
function holds(shape: readonly Position[], { lat, lon }: Position): boolean {
  const lats = shape.map((corner) => corner.lat)
  const lons = shape.map((corner) => corner.lon)
  return (
    Math.min(...lats) <= lat &&
    lat <= Math.max(...lats) &&
    Math.min(...lons) <= lon &&
    lon <= Math.max(...lons)
  )
}

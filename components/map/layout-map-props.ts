import type { Position } from '@/lib/domain/orchard/types'
import type { LayoutDrawing } from '@/lib/map/layout-layer'

/** What a finger on the map does: corners, one empty place, or an area drawn around. */
export type LayoutMode = 'corners' | 'place' | 'area'

export type LayoutMapProps = Omit<LayoutDrawing, 'stroke'> & {
  /** Where the map begins while there are no corners; null: nobody knows. */
  startAt: Position | null
  mode: LayoutMode
  words: { label: string; zoomIn: string; zoomOut: string }
  onChoose: (corner: number) => void
  onMove: (corner: number, to: Position) => void
  onAdd: (at: Position) => void
  /** A place that was tapped. */
  onPlace: (at: Position) => void
  onArea: (shape: readonly Position[]) => void
}

'use client'

import './lead-map.css'

import { useMemo } from 'react'

import { looksOf, useSelect } from '@/lib/hooks'
import { AerialOnMap } from '../aerial/AerialOnMap'
import { useAerialOnMap } from '../aerial/use-aerial-on-map'
import { DiseaseOnMap } from '../disease/DiseaseOnMap'
import { useDiseaseMode } from '../disease/use-disease-mode'
import { OrchardMap } from '../map/OrchardMap'
import { useTilesOnMap } from '../map/use-tiles-on-map'
import { useLocation } from '../where/use-location'
import { WhereOnMap } from '../where/WhereOnMap'
import { MapLayers } from './MapLayers'
import { MapLook } from './MapLook'
import { MapTools } from './MapTools'
import { NoTrees } from './NoTrees'
import { TilesOnMap } from './TilesOnMap'
import { TreeTable } from './TreeTable'
import type { DealingNow } from './use-dealing'
import { useLeadWords } from './use-lead-words'
import { useLongAt } from './use-long-at'
import type { MapFilterNow } from './use-map-filter'
import { useMapLayers } from './use-map-layers'
import { useMapWords } from './use-map-words'

export type MapShow = 'map' | 'table'

type MapWorkProps = {
  show: MapShow
  onShow: (show: MapShow) => void
  dealing: DealingNow
  filter: MapFilterNow
  /** The tree beside the map. */
  open: number | null
  /** Searched for: the map goes there. */
  lookAt: { tree: number } | null
  onTree: (tree: number) => void
  onFind: (tree: number) => void
}

/** The orchard as a map or, for ears and keys, as a table; and what a lead does with it. */
export function MapWork({ show, onShow, dealing, filter, open, lookAt, ...on }: MapWorkProps) {
  const { leadMap, mapTools } = useLeadWords()
  const sheet = useSelect((view) => view.sheet)
  const looks = useSelect(looksOf)
  const flags = useSelect((view) => view.state?.flags)
  const words = useMapWords(dealing.picked)
  const long = useLongAt()
  const disease = useDiseaseMode()
  const here = useLocation()
  const picture = useAerialOnMap()
  const ground = useTilesOnMap()
  const layers = useMapLayers({ disease, picture, ground, here })
  const me = here.location.state === 'found' ? here.location.fix : null
  const selected = useMemo(
    () => (dealing.isPicking ? dealing.picked : new Set(open === null ? [] : [open])),
    [dealing.isPicking, dealing.picked, open]
  )
  const keepOuts = useMemo(
    () =>
      Object.values(flags ?? {}).flatMap(({ tree, kind, keepOutM }) =>
        kind === 'arborist' && keepOutM !== null ? [{ tree, metres: keepOutM }] : []
      ),
    [flags]
  )
  if (!sheet || sheet.trees.length === 0)
    return (
      <div className="lead-map-empty">
        <h1>{leadMap.title}</h1>
        <NoTrees />
      </div>
    )

  const { trees, blocks } = sheet
  const { dimmed } = filter
  return (
    <div className="lead-map">
      <h1 className="sr">{leadMap.title}</h1>
      {!(dealing.isDrawing && show === 'map') && (
        <MapLook
          filter={filter}
          onFind={on.onFind}
          more={show === 'map' && <MapLayers layers={layers} onTable={() => onShow('table')} />}
        >
          {show === 'map' && (
            <>
              <DiseaseOnMap mode={disease} />
              <AerialOnMap picture={picture} />
              <TilesOnMap ground={ground} />
              <WhereOnMap here={here} onTree={on.onFind} />
            </>
          )}
        </MapLook>
      )}
      {show === 'map' ? (
        <OrchardMap
          {...{ trees, blocks, looks, selected, dimmed, long, keepOuts, words, lookAt, me }}
          disease={disease.shown}
          aerial={picture.aerial}
          tiles={ground.tiles}
          drawing={
            dealing.isDrawing ? { corners: dealing.corners, onStroke: dealing.stroke } : null
          }
          onTap={({ no }) => on.onTree(no)}
          onTapRow={dealing.pickRow}
        />
      ) : (
        <div className="lead-map-list">
          <h2 className="sr">{mapTools.table}</h2>
          <TreeTable {...{ dimmed, dealing, open }} onTree={on.onTree} onOpen={on.onFind} />
        </div>
      )}
      <MapTools {...{ show, onShow, dealing }} />
    </div>
  )
}

'use client'

import type { AerialOnMap } from '../aerial/use-aerial-on-map'
import type { DiseaseMode } from '../disease/use-disease-mode'
import { useWords } from '../layout/Words'
import type { TilesOnMap } from '../map/use-tiles-on-map'
import type { IconName } from '../ui/Icon'
import type { useLocation } from '../where/use-location'
import { useLeadWords } from './use-lead-words'

/** Something that is laid over or under the map and taken off again. */
export type MapLayer = { words: string; icon?: IconName; turn: () => void }

type Shown = {
  disease: DiseaseMode
  picture: AerialOnMap
  ground: TilesOnMap
  here: ReturnType<typeof useLocation>
}

/** Those that there are: no picture, and no server for the ground, is nothing to show. */
export function useMapLayers({ disease, picture, ground, here }: Shown): readonly MapLayer[] {
  const { where } = useWords()
  const { disease: ofDisease, aerial } = useLeadWords()
  const isLooking = here.location.state !== 'off'
  return [
    { words: disease.isOn ? ofDisease.offMap : ofDisease.onMap, turn: disease.toggle },
    picture.exists &&
      !picture.isNone && {
        words: picture.isShown ? aerial.hide : aerial.show,
        icon: 'map' as const,
        turn: picture.turn,
      },
    ground.from !== null && {
      words: ground.isShown ? aerial.hideTiles : aerial.showTiles,
      icon: 'map' as const,
      turn: ground.turn,
    },
    {
      words: isLooking ? where.stop : where.title,
      icon: 'meet' as const,
      turn: isLooking ? here.stop : here.look,
    },
  ].filter((layer) => layer !== false)
}

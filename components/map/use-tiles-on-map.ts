'use client'

import { useMemo, useState } from 'react'

import { hostOf, tilesInPage } from './tiles-in-page'

/** Off until somebody asks for it: each device that shows the pictures asks another server for them. */
export function useTilesOnMap() {
  const tiles = useMemo(() => (typeof document === 'undefined' ? null : tilesInPage()), [])
  const [isShown, setShown] = useState(false)
  return {
    from: tiles && hostOf(tiles),
    isShown,
    tiles: isShown ? tiles : null,
    turn: () => setShown(!isShown),
  }
}

export type TilesOnMap = ReturnType<typeof useTilesOnMap>

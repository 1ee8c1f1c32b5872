'use client'

import { useMemo, useState } from 'react'

import { useAerial, useSelect } from '@/lib/hooks'
import type { Aerial } from '../map/map-props'
import { aerialOf } from './aerial-of'
import { useAerialImage } from './use-aerial-image'

/** The picture under a lead's map: fetched once somebody asks for it, since it is as heavy as the app. */
export function useAerialOnMap() {
  const [isShown, setShown] = useState(false)
  const exists = useSelect((view) => (view.state?.orchard.aerialVersion ?? 0) > 0)
  const reading = useAerial(isShown && exists)
  const read = reading.state === 'read' ? reading.value : null
  const image = useAerialImage(read?.jpeg ?? null)
  const aerial: Aerial | null = useMemo(
    () => (isShown && read && image ? aerialOf(read, image) : null),
    [isShown, read, image]
  )
  return {
    exists,
    isShown,
    hasFailed: reading.state === 'failed',
    /** It was taken away. */
    isNone: reading.state === 'read' && reading.value === null,
    aerial,
    turn: () => setShown(!isShown),
  }
}

export type AerialOnMap = ReturnType<typeof useAerialOnMap>

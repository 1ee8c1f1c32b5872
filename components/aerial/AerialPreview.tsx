'use client'

import { useMemo } from 'react'

import { looksOf, useSelect } from '@/lib/hooks'
import { useMapWords } from '../crew/use-map-words'
import { OrchardMap } from '../map/OrchardMap'
import { aerialOf } from './aerial-of'
import { pointsSent, type Three } from './aerial-typed'
import { useAerialImage } from './use-aerial-image'

type AerialPreviewProps = { jpeg: string; three: Three; opacity: number }

const none: ReadonlySet<number> = new Set()

/** The map with the picture under it, before anybody else sees it. */
export function AerialPreview({ jpeg, three, opacity }: AerialPreviewProps) {
  const sheet = useSelect((view) => view.sheet)
  const looks = useSelect(looksOf)
  const words = useMapWords(none)
  const image = useAerialImage(jpeg)
  const aerial = useMemo(
    () => image && aerialOf({ points: pointsSent(three), opacity }, image),
    [image, three, opacity]
  )
  if (!sheet) return null
  const { trees, blocks } = sheet
  return (
    <div className="aerial-preview">
      <OrchardMap {...{ trees, blocks, looks, words, aerial }} onTap={() => {}} />
    </div>
  )
}

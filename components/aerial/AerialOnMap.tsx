'use client'

import { useLeadWords } from '../layout/Words'
import type { AerialOnMap as Picture } from './use-aerial-on-map'

/** While the picture that is to lie under the map is not there: that it comes, or could not. */
export function AerialOnMap({ picture }: { picture: Picture }) {
  const { aerial: text } = useLeadWords()
  const { isShown, isNone, hasFailed, aerial } = picture
  if (!isShown || isNone || aerial) return null
  return (
    <p className="map-said" role="status">
      {hasFailed ? text.notCome : text.coming}
    </p>
  )
}

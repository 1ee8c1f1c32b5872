'use client'

import { useLeadWords } from '../layout/Words'
import { Button } from '../ui/Button'
import type { AerialOnMap } from './use-aerial-on-map'

/** Shows and hides the picture under the map; nothing where the orchard has none. */
export function AerialOnMapButton({ picture }: { picture: AerialOnMap }) {
  const { aerial: text } = useLeadWords()
  const { exists, isShown, isNone, hasFailed, aerial, turn } = picture
  if (!exists || isNone) return null
  return (
    <>
      <Button icon="map" onPress={turn}>
        {isShown ? text.hide : text.show}
      </Button>
      {isShown && !aerial && (
        <p className="map-said" role="status">
          {hasFailed ? text.notCome : text.coming}
        </p>
      )}
    </>
  )
}

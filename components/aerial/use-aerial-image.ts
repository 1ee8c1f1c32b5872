'use client'

import { useEffect, useState } from 'react'

/** A picture as the map draws it; null while it is being read, or cannot be. */
export function useAerialImage(jpeg: string | null): ImageBitmap | null {
  const [image, setImage] = useState<ImageBitmap | null>(null)
  useEffect(() => {
    let isWanted = true
    setImage(null)
    if (jpeg === null) return
    decode(jpeg).then(
      (bitmap) => isWanted && setImage(bitmap),
      () => {}
    )
    return () => {
      isWanted = false
    }
  }, [jpeg])
  return image
}

function decode(jpeg: string): Promise<ImageBitmap> {
  const bytes = Uint8Array.from(atob(jpeg), (sign) => sign.charCodeAt(0))
  return createImageBitmap(new Blob([bytes], { type: 'image/jpeg' }))
}

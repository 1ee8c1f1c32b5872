'use client'

import { usePhoto } from '@/lib/hooks'

/** A photo on paper; nothing where it could not be read. */
export function PaperPhoto({ photo, alt }: { photo: string; alt: string }) {
  const reading = usePhoto(photo)
  if (reading.state !== 'read') return null
  // biome-ignore lint/performance/noImgElement: it came by the referee, there is no address to optimise
  return <img src={`data:image/jpeg;base64,${reading.value.jpeg}`} alt={alt} />
}

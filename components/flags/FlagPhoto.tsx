'use client'

import { usePhoto } from '@/lib/hooks'
import { useLeadWords } from '../crew/use-lead-words'

/** A photo as it was taken, or why it is not there. */
export function FlagPhoto({ photo, alt }: { photo: string; alt: string }) {
  const { flags: text } = useLeadWords()
  const reading = usePhoto(photo)
  if (reading.state === 'reading') return <p className="small">{text.photoComing}</p>
  if (reading.state === 'failed') return <p className="small">{text.photoNotRead}</p>
  // biome-ignore lint/performance/noImgElement: it came by the referee, there is no address to optimise
  return <img src={`data:image/jpeg;base64,${reading.value.jpeg}`} alt={alt} />
}

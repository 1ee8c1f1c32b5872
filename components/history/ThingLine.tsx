'use client'

import { useState } from 'react'

import { type ThingOfTree, usePhoto } from '@/lib/hooks'
import { faultSentence } from '@/lib/text/fault'
import { useFormat } from '../layout/use-format'
import { useWords } from '../layout/Words'
import { Button } from '../ui/Button'
import type { ThingSaid } from './use-thing-words'

type ThingLineProps = { thing: ThingOfTree; said: ThingSaid }

/** One thing with its day; a photo is fetched when somebody wants to see it. */
export function ThingLine({ thing, said: { title, more } }: ThingLineProps) {
  const { history: text } = useWords()
  const format = useFormat()
  const [isShown, setIsShown] = useState(false)
  const day = format.fullDate(new Date(thing.at))
  return (
    <li className="thing-line">
      <span className="small">{day}</span>
      <span>
        <b>{title}</b>
        {more.length > 0 && <span className="small">{more.join(', ')}</span>}
        {thing.note !== null && <span className="said">{thing.note}</span>}
        {thing.what === 'photo' &&
          (isShown ? (
            <ThingPhoto photo={thing.id} alt={text.photoAlt(day)} />
          ) : (
            <Button icon="camera" onPress={() => setIsShown(true)}>
              {text.showPhoto}
            </Button>
          ))}
      </span>
    </li>
  )
}

function ThingPhoto({ photo, alt }: { photo: string; alt: string }) {
  const words = useWords()
  const reading = usePhoto(photo)
  if (reading.state === 'reading') return <p role="status">{words.common.asking}</p>
  if (reading.state === 'failed') return <p>{faultSentence(words, { fault: reading.fault })}</p>
  // biome-ignore lint/performance/noImgElement: it came by the referee, there is no address to optimise
  return <img src={`data:image/jpeg;base64,${reading.value.jpeg}`} alt={alt} />
}

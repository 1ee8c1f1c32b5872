'use client'

import './aerial.css'

import { useState } from 'react'

import { useAerial } from '@/lib/hooks'
import { useLeadWords } from '../layout/Words'
import { Room } from '../rooms/Room'
import { AerialForm } from './AerialForm'
import { PicturePick } from './PicturePick'

/** Chooses a picture and lays it under the map by three trees that one knows in it. */
export function AerialScreen() {
  const { aerial: text } = useLeadWords()
  const reading = useAerial(true)
  const [chosen, setChosen] = useState<string | null>(null)
  const kept = reading.state === 'read' ? reading.value : null
  const jpeg = chosen ?? kept?.jpeg ?? null
  return (
    <Room title={text.title} lead={text.lead}>
      <div className="stack aerial">
        <PicturePick hasPicture={jpeg !== null} onPicture={setChosen} />
        {reading.state === 'reading' && <p role="status">{text.coming}</p>}
        {jpeg !== null && (
          <AerialForm
            // Another picture has its trees elsewhere.
            key={`${jpeg.length} ${jpeg.slice(-64)}`}
            jpeg={jpeg}
            isNew={chosen !== null}
            kept={chosen === null ? kept : null}
            onSaved={() => setChosen(null)}
          />
        )}
      </div>
    </Room>
  )
}

'use client'

import './aerial.css'

import { useState } from 'react'

import { useAerial } from '@/lib/hooks'
import { useLeadWords } from '../layout/Words'
import { Room } from '../rooms/Room'
import { Note } from '../ui/Note'
import { AerialForm } from './AerialForm'
import { PicturePick } from './PicturePick'

/** Chooses a picture and lays it under the map by three trees that one knows in it. */
export function AerialScreen() {
  const { aerial: text } = useLeadWords()
  const reading = useAerial(true)
  const [chosen, setChosen] = useState<string | null>(null)
  // Said here: the form begins anew with what is kept from now on.
  const [isSaved, setSaved] = useState(false)
  const kept = reading.state === 'read' ? reading.value : null
  const jpeg = chosen ?? kept?.jpeg ?? null
  return (
    <Room title={text.title} lead={text.lead}>
      <div className="stack">
        <PicturePick
          hasPicture={jpeg !== null}
          onPicture={(picture) => {
            setSaved(false)
            setChosen(picture)
          }}
        />
        {reading.state === 'reading' && <p role="status">{text.coming}</p>}
        {jpeg !== null && (
          <AerialForm
            // Another picture has its trees elsewhere.
            key={`${jpeg.length} ${jpeg.slice(-64)}`}
            jpeg={jpeg}
            isNew={chosen !== null}
            kept={chosen === null ? kept : null}
            onChanged={() => setSaved(false)}
            onSaved={() => {
              setChosen(null)
              setSaved(true)
            }}
          />
        )}
        {isSaved && (
          <Note tone="done" icon="check" role="status">
            {text.saved}
          </Note>
        )}
      </div>
    </Room>
  )
}

'use client'

import { useRef, useState } from 'react'

import { useLeadWords } from '../layout/Words'
import { shrinkAerial } from '../tree/darkroom'
import type { Shrunk } from '../tree/shrink-photo'
import { Button } from '../ui/Button'
import { Why } from '../ui/Why'

type PicturePickProps = { hasPicture: boolean; onPicture: (jpeg: string) => void }

/** A picture of this device, made small and plain before anything else. */
export function PicturePick({ hasPicture, onPicture }: PicturePickProps) {
  const { aerial: text } = useLeadWords()
  const input = useRef<HTMLInputElement>(null)
  const [state, setState] = useState<'ready' | 'working' | Exclude<Shrunk['state'], 'shrunk'>>(
    'ready'
  )
  async function take(file: File | undefined): Promise<void> {
    if (!file) return
    setState('working')
    const shrunk = await shrinkAerial(file)
    setState(shrunk.state === 'shrunk' ? 'ready' : shrunk.state)
    if (shrunk.state === 'shrunk') onPicture(shrunk.jpeg)
  }
  return (
    <>
      <input
        ref={input}
        hidden
        type="file"
        accept="image/*"
        onChange={(event) => {
          const [file] = event.target.files ?? []
          event.target.value = ''
          void take(file)
        }}
      />
      <Button
        kind={hasPicture ? 'plain' : 'call'}
        icon="map"
        onPress={() => input.current?.click()}
      >
        {hasPicture ? text.chooseOther : text.choose}
      </Button>
      <p className="small" role="status">
        {state === 'working' ? text.working : text.stripped}
      </p>
      {state === 'not_a_photo' && <Why tone="wrong">{text.notRead}</Why>}
      {state === 'too_large' && <Why tone="wrong">{text.tooLarge}</Why>}
    </>
  )
}

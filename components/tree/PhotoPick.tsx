'use client'

import { useEffect, useRef, useState } from 'react'

import { useWords } from '../layout/Words'
import { Button } from '../ui/Button'
import { CameraInput } from '../ui/CameraInput'
import { Icon } from '../ui/Icon'
import { Why } from '../ui/Why'
import { shrinkPhoto } from './darkroom'
import type { Shrunk } from './shrink-photo'

type PhotoPickProps = {
  title: string
  hint: string
  /** Base64 of the one that is kept; null while there is none. */
  jpeg: string | null
  onPhoto: (jpeg: string) => void
  /** Where it can still be left out. */
  onAway?: () => void
  /** The camera can end the page: what was entered is stored before. */
  beforeCamera: () => Promise<void>
}

/** A photo from the camera or the phone's own, made small before anything else. */
export function PhotoPick({ title, hint, jpeg, onPhoto, onAway, beforeCamera }: PhotoPickProps) {
  const { flag } = useWords()
  const input = useRef<HTMLInputElement>(null)
  const [state, setState] = useState<'ready' | 'working' | Exclude<Shrunk['state'], 'shrunk'>>(
    'ready'
  )

  // A photo takes a while to be made small; what was written meanwhile must not be put back.
  const keep = useRef(onPhoto)
  useEffect(() => {
    keep.current = onPhoto
  })

  async function openCamera(): Promise<void> {
    await beforeCamera()
    input.current?.click()
  }

  async function take(file: File): Promise<void> {
    setState('working')
    const shrunk = await shrinkPhoto(file)
    setState(shrunk.state === 'shrunk' ? 'ready' : shrunk.state)
    if (shrunk.state === 'shrunk') keep.current(shrunk.jpeg)
  }

  return (
    <div className="photo-pick">
      <CameraInput input={input} onFile={(file) => void take(file)} />
      <button type="button" className="offer" onClick={() => void openCamera()}>
        <Icon name="camera" size={32} />
        <span className="grow">
          <b>{jpeg === null ? title : flag.photoAgain}</b>
          <span className="small">{state === 'working' ? flag.photoWorking : hint}</span>
        </span>
        <Icon name="right" />
      </button>
      {state === 'too_large' && <Why tone="wrong">{flag.photoTooLarge}</Why>}
      {state === 'not_a_photo' && <Why tone="wrong">{flag.photoNotRead}</Why>}
      {jpeg !== null && (
        <div className="row wrap" role="status">
          {/* biome-ignore lint/performance/noImgElement: a photo on this phone only, nothing to optimise */}
          <img src={`data:image/jpeg;base64,${jpeg}`} alt={flag.photoKept} />
          <span className="grow">{flag.photoKept}</span>
          {onAway && (
            <Button icon="cross" onPress={onAway}>
              {flag.photoAway}
            </Button>
          )}
        </div>
      )}
    </div>
  )
}

'use client'

import { useRef } from 'react'

import { Button } from '../ui/Button'
import { CameraInput } from '../ui/CameraInput'

type TakePhotoProps = {
  kind: 'call' | 'plain'
  words: string
  /** Where the words alone do not say of what. */
  label?: string | undefined
  isWorking: boolean
  onFile: (file: File) => void
}

/** A button that opens the camera, or the phone's own pictures. */
export function TakePhoto({ kind, words, label, isWorking, onFile }: TakePhotoProps) {
  const input = useRef<HTMLInputElement>(null)
  return (
    <>
      <CameraInput input={input} onFile={onFile} />
      <Button
        kind={kind}
        icon="camera"
        label={label}
        state={isWorking ? 'waiting' : 'ready'}
        onPress={() => input.current?.click()}
      >
        {words}
      </Button>
    </>
  )
}

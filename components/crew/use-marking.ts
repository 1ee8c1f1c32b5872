'use client'

import { useState } from 'react'

import { useSend } from '@/lib/hooks'
import { shrinkPhoto } from '../tree/darkroom'
import type { Stroke } from '../tree/strokes'
import { useAsk } from './use-ask'

export type Marking = { note: string; jpeg: string | null; strokes: readonly Stroke[] }

export const noMarking: Marking = { note: '', jpeg: null, strokes: [] }

/** Marks the big cuts, then sends the photo with what was drawn on it: both are kept and go out by themselves. */
export function useMarking(tree: number) {
  const send = useSend()
  const { asked, isAsking, ask } = useAsk()
  const [isDrawing, setIsDrawing] = useState(false)
  const [isPhotoLost, setIsPhotoLost] = useState(false)

  async function mark({ note, jpeg, strokes }: Marking, then: () => void): Promise<void> {
    setIsDrawing(true)
    setIsPhotoLost(false)
    const photo = jpeg === null ? null : await drawnInto(jpeg, strokes)
    setIsDrawing(false)
    if (photo?.state === 'too_large' || photo?.state === 'not_a_photo') {
      setIsPhotoLost(true)
      return
    }
    const words = note.trim()
    await ask(send('mark_big_cuts', { tree, note: words === '' ? null : words }), ({ id }) => {
      if (photo) void send('add_photo', { mark: id, purpose: 'mark', jpeg: photo.jpeg })
      then()
    })
  }

  return { asked, isBusy: isAsking || isDrawing, isPhotoLost, mark }
}

/** A photo without strokes is small already. */
async function drawnInto(jpeg: string, strokes: readonly Stroke[]) {
  if (strokes.length === 0) return { state: 'shrunk', jpeg } as const
  const bytes = Uint8Array.from(atob(jpeg), (letter) => letter.charCodeAt(0))
  return shrinkPhoto(new Blob([bytes], { type: 'image/jpeg' }), strokes)
}

'use client'

import { useState } from 'react'

import { useRowcall, useSend } from '@/lib/hooks'
import { useWords } from '../layout/Words'
import { PhotoPick } from './PhotoPick'

/** A photo up through the crown: offered, never asked for. It is kept at once and goes out by itself. */
export function AfterPhoto({ tree }: { tree: number }) {
  const { tree: text } = useWords()
  const send = useSend()
  const { workArgs } = useRowcall()
  const [jpeg, setJpeg] = useState<string | null>(null)

  async function keep(photo: string): Promise<void> {
    setJpeg(photo)
    const { claim } = await workArgs(tree)
    await send('add_photo', { tree, claim, purpose: 'after', jpeg: photo })
  }

  return (
    <PhotoPick
      title={text.photo}
      hint={text.photoWhy}
      jpeg={jpeg}
      onPhoto={(photo) => void keep(photo)}
      beforeCamera={async () => {}}
    />
  )
}

'use client'

import { type ReactNode, useState } from 'react'

import { Button } from '../ui/Button'

/** What some like to say and nobody has to: it opens where its button was. */
export function Unfold({ words, children }: { words: string; children: ReactNode }) {
  const [isOpen, setOpen] = useState(false)
  return (
    <>
      <Button
        wide
        icon={isOpen ? 'minus' : 'plus'}
        expanded={isOpen}
        onPress={() => setOpen(!isOpen)}
      >
        {words}
      </Button>
      {isOpen && children}
    </>
  )
}

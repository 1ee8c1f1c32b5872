'use client'

import { type ReactNode, useId } from 'react'

import type { OpenFlag, Sent } from '@/lib/hooks'
import { AskedNote } from '../crew/AskedNote'
import { useAsk } from '../crew/use-ask'
import { useWords } from '../layout/Words'
import { Button } from '../ui/Button'
import { Dialog } from '../ui/Dialog'
import { Why } from '../ui/Why'

/** What every form about a flag is given. */
export type AboutFlag = { flag: OpenFlag; tag: string; onClose: () => void }

type FlagFormProps = {
  title: string
  note: string
  /** What still has to be said; null: it can be sent. */
  lacks: string | null
  words: string
  send: () => Promise<Sent>
  /** It is kept or accepted. */
  onDone: () => void
  onClose: () => void
  children: ReactNode
}

/** A few questions about one flag over the queue, and the button that sends what they come to. */
export function FlagForm(props: FlagFormProps) {
  const { title, note, lacks, words, send, onDone, onClose, children } = props
  const { common } = useWords()
  const whyId = useId()
  const { asked, isAsking, ask } = useAsk()
  return (
    <Dialog open title={title} onClose={onClose} closeLabel={common.close}>
      <p>{note}</p>
      {children}
      <AskedNote asked={asked} />
      {lacks !== null && <Why id={whyId}>{lacks}</Why>}
      {lacks !== null ? (
        <Button kind="call" state="off" describedBy={whyId}>
          {words}
        </Button>
      ) : (
        <Button
          kind="call"
          state={isAsking ? 'waiting' : 'ready'}
          onPress={() => void ask(send(), onDone)}
        >
          {words}
        </Button>
      )}
    </Dialog>
  )
}

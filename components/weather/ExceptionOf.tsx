'use client'

import { useId, useState } from 'react'
import { darkness } from '@/lib/events/dark'
import type { darkBecause, exceptionBecause } from '@/lib/events/shapes'
import { nameOf, useSelect, useSend } from '@/lib/hooks'
import { AskedNote } from '../crew/AskedNote'
import { useAsk } from '../crew/use-ask'
import { useLeadWords } from '../crew/use-lead-words'
import { useFormat } from '../layout/use-format'
import { useWords } from '../layout/Words'
import { Button } from '../ui/Button'
import { ChoiceGroup } from '../ui/ChoiceGroup'
import { Note } from '../ui/Note'
import { Pick } from '../ui/Pick'
import { TextField } from '../ui/TextField'
import { useExceptedName } from './use-excepted-name'

type Because = (typeof exceptionBecause | typeof darkBecause)[number]

type ExceptionOfProps = {
  /** A species, or darkness. */
  what: string
  because: readonly Because[]
  isOff: boolean
  isLifted: boolean
}

/** A lead may let a species be pruned although it is off, or work go on in the dark; why is kept with their name. */
export function ExceptionOf({ what, because, isOff, isLifted }: ExceptionOfProps) {
  const { weather: text } = useLeadWords()
  const send = useSend()
  const { asked, ask, isAsking } = useAsk()
  const [isOpen, setIsOpen] = useState(false)
  const made = useSelect((view) => view.state?.exceptions[what] ?? null)
  const name = useExceptedName()(what)

  return (
    <div className="stack">
      {made && isLifted && <ExceptionNote what={what} />}
      <AskedNote asked={asked} />
      {isOpen ? (
        <ExceptionForm
          what={what}
          choices={because}
          onSend={(because, note) =>
            ask(send('make_exception', { what, because, note }), () => setIsOpen(false))
          }
          onCancel={() => setIsOpen(false)}
          isAsking={isAsking}
        />
      ) : (
        <div className="row wrap">
          {isOff && (
            <Button label={text.exceptOf(name)} onPress={() => setIsOpen(true)}>
              {text.except}
            </Button>
          )}
          {made && (
            <Button
              label={text.exceptEndOf(name)}
              state={isAsking ? 'waiting' : 'ready'}
              onPress={() => ask(send('end_exception', { what }))}
            >
              {text.exceptEnd}
            </Button>
          )}
        </div>
      )}
    </div>
  )
}

function ExceptionNote({ what }: { what: string }) {
  const { weather: text } = useLeadWords()
  const words = useWords()
  const format = useFormat()
  const made = useSelect((view) => view.state?.exceptions[what] ?? null)
  const by = useSelect((view) => nameOf(view, made?.madeBy ?? ''))
  if (!made) return null
  const why = text.because[made.because as Because] ?? made.because
  return (
    <Note tone="call" icon="edit">
      {text.lifted(by ?? words.claim.somebody, why, format.clock(new Date(made.madeAt)))}
    </Note>
  )
}

type ExceptionFormProps = {
  what: string
  choices: readonly Because[]
  onSend: (because: Because, note: string | null) => void
  onCancel: () => void
  isAsking: boolean
}

function ExceptionForm({ what, choices, onSend, onCancel, isAsking }: ExceptionFormProps) {
  const { weather: text } = useLeadWords()
  const name = useId()
  const [because, setBecause] = useState<Because | null>(null)
  const [note, setNote] = useState('')
  return (
    <div className="stack" id={`exception-${what}`}>
      <ChoiceGroup label={what === darkness ? text.exceptDark : text.exceptWhy} as="picks">
        {choices.map((one) => (
          <Pick
            key={one}
            type="radio"
            name={name}
            checked={because === one}
            onChange={() => setBecause(one)}
          >
            {text.because[one]}
          </Pick>
        ))}
      </ChoiceGroup>
      <TextField label={text.exceptNote} value={note} onChange={setNote} maxLength={300} />
      <div className="row wrap">
        {because && (
          <Button
            sub={text.exceptSub}
            state={isAsking ? 'waiting' : 'ready'}
            onPress={() => onSend(because, note.trim() || null)}
          >
            {text.exceptSave}
          </Button>
        )}
        <Button onPress={onCancel}>{text.cancel}</Button>
      </div>
    </div>
  )
}

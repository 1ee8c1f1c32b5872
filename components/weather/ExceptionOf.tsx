'use client'

import { useId, useState } from 'react'

import type { Verdict } from '@/lib/domain/safety/prune-today'
import { exceptionBecause } from '@/lib/events/shapes'
import { nameOf, useSelect, useSend } from '@/lib/hooks'
import { speciesWords } from '@/lib/text/species'
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

type Because = (typeof exceptionBecause)[number]

/** A lead may let a species be pruned although it is off; the reason is kept with their name. */
export function ExceptionOf({ species, verdict }: { species: string; verdict: Verdict }) {
  const { weather: text } = useLeadWords()
  const words = useWords()
  const send = useSend()
  const { asked, ask, isAsking } = useAsk()
  const [isOpen, setIsOpen] = useState(false)
  const made = useSelect((view) => view.state?.exceptions[species] ?? null)
  const name = speciesWords(words, species).many
  const isOff = verdict.reasons.some(({ weight }) => weight === 'off')

  return (
    <div className="stack">
      {made && verdict.lifted.length > 0 && <ExceptionNote species={species} />}
      <AskedNote asked={asked} />
      {isOpen ? (
        <ExceptionForm
          species={species}
          onSend={(because, note) =>
            ask(send('make_exception', { what: species, because, note }), () => setIsOpen(false))
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
              onPress={() => ask(send('end_exception', { what: species }))}
            >
              {text.exceptEnd}
            </Button>
          )}
        </div>
      )}
    </div>
  )
}

function ExceptionNote({ species }: { species: string }) {
  const { weather: text } = useLeadWords()
  const words = useWords()
  const format = useFormat()
  const made = useSelect((view) => view.state?.exceptions[species] ?? null)
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
  species: string
  onSend: (because: Because, note: string | null) => void
  onCancel: () => void
  isAsking: boolean
}

function ExceptionForm({ species, onSend, onCancel, isAsking }: ExceptionFormProps) {
  const { weather: text } = useLeadWords()
  const name = useId()
  const [because, setBecause] = useState<Because | null>(null)
  const [note, setNote] = useState('')
  return (
    <div className="stack" id={`exception-${species}`}>
      <ChoiceGroup label={text.exceptWhy} as="picks">
        {exceptionBecause.map((one) => (
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

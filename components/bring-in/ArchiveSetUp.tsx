'use client'

import { useState } from 'react'

import {
  type ArchiveHeader,
  type ArchivePart,
  managersIn,
  readArchive,
} from '@/lib/domain/orchard/archive'
import { type Sent, useRowcall } from '@/lib/hooks'
import { routes } from '@/lib/routes'
import { JoinFrame } from '../join/JoinFrame'
import { forgetCode } from '../join/use-code'
import { WhyNotMade } from '../join/WhyNotMade'
import { useFormat } from '../layout/use-format'
import { useGo } from '../layout/use-go'
import { useLeadWords } from '../layout/Words'
import { Button } from '../ui/Button'
import { SelectField } from '../ui/SelectField'
import { Why } from '../ui/Why'
import { FileButton } from './FileButton'
import { unzipped } from './gzip'

type Chosen = {
  header: ArchiveHeader
  parts: ArchivePart[]
  managers: { id: string; name: string }[]
}

/** A whole orchard comes in by a set-up code, and who brings it goes on as one of its managers. */
export function ArchiveSetUp({ code, onBack }: { code: string; onBack: () => void }) {
  const { takeOut: text } = useLeadWords()
  const format = useFormat()
  const go = useGo()
  const { bringInOrchard } = useRowcall()
  const [chosen, setChosen] = useState<Chosen | null>(null)
  const [isArchive, setIsArchive] = useState(true)
  const [person, setPerson] = useState('')
  const [sentParts, setSentParts] = useState<number | null>(null)
  const [sent, setSent] = useState<Sent | null>(null)

  const read = async (file: File | undefined) => {
    if (!file) return
    const known = readArchive((await unzipped(file)) ?? '')
    setIsArchive(known.state === 'read' || known.why !== 'not_archive')
    if (known.state === 'refused') {
      setChosen(null)
      // As the referee would say it.
      setSent({ state: 'refused', id: '', refused: [{ code: known.why }], next: null })
      return
    }
    setSent(null)
    const managers = managersIn(known.parts)
    setChosen({ ...known, managers })
    setPerson(managers[0]?.id ?? '')
  }
  const bringIn = async () => {
    if (!chosen || sentParts !== null) return
    setSentParts(0)
    const { header, parts } = chosen
    const said = { code, orchard: header.orchard, person, parts, onPart: setSentParts }
    const answer = await bringInOrchard(said)
    setSentParts(null)
    setSent(answer)
    if (answer.state !== 'accepted') return
    forgetCode()
    go.replace(routes.home())
  }
  const isSending = sentParts !== null
  return (
    <JoinFrame
      bench={
        <>
          {isArchive ? <WhyNotMade sent={sent} /> : <Why tone="wrong">{text.notArchive}</Why>}
          {isSending && chosen && (
            <p role="status">{text.inSending(sentParts, chosen.parts.length)}</p>
          )}
          {chosen && person !== '' && (
            <Button
              kind="call"
              state={isSending ? 'waiting' : 'ready'}
              onPress={() => void bringIn()}
            >
              {text.inGo}
            </Button>
          )}
        </>
      }
    >
      <div className="stack">
        <h1>{text.inTitle}</h1>
        <p className="muted">{text.inLead}</p>
        <FileButton
          label={text.inChoose}
          isCalled={chosen === null}
          accept=".gz,application/gzip"
          onFile={(file) => void read(file)}
        />
        {chosen && (
          <>
            <p>{text.inOf(chosen.header.name, format.fullDate(new Date(chosen.header.at)))}</p>
            {chosen.managers.length === 0 ? (
              <Why tone="wrong">{text.inNobody}</Why>
            ) : (
              <SelectField
                label={text.inWho}
                hint={text.inWhoHint}
                options={chosen.managers.map(({ id, name }) => ({ value: id, label: name }))}
                value={person}
                onChange={setPerson}
              />
            )}
          </>
        )}
        <Button onPress={onBack}>{text.makeInstead}</Button>
      </div>
    </JoinFrame>
  )
}

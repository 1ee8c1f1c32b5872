'use client'

import { useId, useState } from 'react'

import { useDraft, useSelect, useSend } from '@/lib/hooks'
import { AskedNote } from '../crew/AskedNote'
import { useAsk } from '../crew/use-ask'
import { useLeadWords } from '../crew/use-lead-words'
import { useFormat } from '../layout/use-format'
import { useNameOf } from '../sync/use-refusal-words'
import { Button } from '../ui/Button'
import { Panel } from '../ui/Panel'
import { Why } from '../ui/Why'
import { LeftGroup } from './LeftGroup'
import { LookedFor } from './LookedFor'
import {
  countWithoutWhy,
  type LeftKind,
  leftOpen,
  lookedFor,
  noWhys,
  putDownFirst,
  type Whys,
  whysFor,
  withMe,
} from './leaving'
import { useLeftWords } from './use-left-words'
import { usePutDown } from './use-put-down'

const nothingLeft = { people: [], claims: [], tools: [] }

/** Closes the shift: everything that is still open is listed, and a lead says why for each. */
export function CloseShift({ shiftId, isNext }: { shiftId: string; isNext: boolean }) {
  const { shift: text } = useLeadWords()
  const send = useSend()
  const whyId = useId()
  const left = useSelect(({ state }) => (state ? leftOpen(state) : nothingLeft))
  const me = useSelect((view) => view.me?.personId ?? '')
  const draft = useDraft<Whys>(`close|${shiftId}`, noWhys)
  const { asked, ask } = useAsk()
  const leftWords = useLeftWords()
  const putDown = usePutDown()
  const format = useFormat()
  const nameOf = useNameOf()
  const [writes, setWrites] = useState(true)
  const [isClosing, setIsClosing] = useState(false)
  const whys = withMe(draft.value, me, left, text.closing)
  const missing = lookedFor(left, whys, text.whyPeople.lookedFor)
  const lacking = countWithoutWhy(left, whys)
  const kind = isNext ? 'call' : 'plain'
  const kinds: readonly LeftKind[] = ['people', 'claims', 'tools']

  const close = async () => {
    const known = putDownFirst(left, whys, text.whyClaims)
    for (const { claim, isFinished } of known) await putDown(claim, isFinished)
    await ask(send('close_shift', { why: whysFor(left, whys), notFound: missing }), () => {
      void draft.drop()
      if (missing.length === 0 || !writes) return
      const note = text.lookedForWords(format.list(missing.map(nameOf)))
      void send('write_incident', { kind: 'lost_person', note })
    })
  }

  if (!isClosing)
    return (
      <Panel title={text.closeTitle}>
        <div className="stack">
          <ul className="plain-list">
            {kinds.map(
              (one) => left[one].length > 0 && <li key={one}>{leftWords[one](left[one]).title}</li>
            )}
          </ul>
          <Button kind={kind} onPress={() => setIsClosing(true)}>
            {text.close}
          </Button>
        </div>
      </Panel>
    )
  return (
    <Panel title={text.closeTitle}>
      <div className="stack">
        <p className="small">{text.closeNote}</p>
        {kinds.every((one) => left[one].length === 0) && <p>{text.nothingOpen}</p>}
        {kinds.map((one) => (
          <LeftGroup
            key={one}
            {...leftWords[one](left[one])}
            whys={whys[one]}
            onWhy={(some) => draft.write({ ...whys, [one]: { ...whys[one], ...some } })}
          />
        ))}
        <LookedFor people={missing} writes={writes} onWrites={setWrites} />
        <AskedNote asked={asked} />
        {lacking > 0 && <Why id={whyId}>{text.writeWhy(lacking)}</Why>}
        {lacking > 0 ? (
          <Button kind={kind} state="off" describedBy={whyId}>
            {text.close}
          </Button>
        ) : (
          <Button
            kind={kind}
            state={asked.state === 'asking' ? 'waiting' : 'ready'}
            onPress={close}
          >
            {text.close}
          </Button>
        )}
      </div>
    </Panel>
  )
}

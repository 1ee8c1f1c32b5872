'use client'

import { useState } from 'react'

import type { CallKind } from '@/lib/events/state'
import { leadsHere, type Sent, useDraft, useNow, useSelect, useSend } from '@/lib/hooks'
import { EmergencyCard } from '../day/EmergencyCard'
import { CrewScreen } from '../layout/CrewScreen'
import { useFormat } from '../layout/use-format'
import { useWords } from '../layout/Words'
import { useNameOf, useTagOf } from '../sync/use-refusal-words'
import { WhyNot } from '../sync/WhyNot'
import { Button } from '../ui/Button'
import { Note } from '../ui/Note'
import { TextArea } from '../ui/TextArea'
import { Why } from '../ui/Why'
import { type Place, usePlace } from './use-place'
import { WhoIsMissing, type Whom } from './WhoIsMissing'

type MakeCallProps = {
  kind: CallKind
  forPerson: string | null
  onBack: () => void
  onSent: () => void
}

type CallDraft = { note: string; whom: Whom | null }

/** As the table keeps it. */
const longestNote = 300
const whySayWho = 'say-who'

/** One kind of call: what helps first stands first, a few words for who likes, and one press that sends it. */
export function MakeCall({ kind, forPerson, onBack, onSent }: MakeCallProps) {
  const { call, common } = useWords()
  const send = useSend()
  const now = useNow(1_000)
  const place = usePlace(forPerson)
  const draft = useDraft<CallDraft>(`call|${kind}|${forPerson}`, { note: '', whom: null })
  const [sent, setSent] = useState<Sent | null>(null)
  const { note, whom } = draft.value
  const isInjury = kind === 'injury'
  const lacksWhom = kind === 'lost_person' && whom === null

  async function callForHelp(): Promise<void> {
    const args = {
      kind,
      tree: kind === 'lost_person' ? (whom?.tree ?? null) : (place?.tree ?? null),
      subject: whom?.personId ?? null,
      note: note.trim() || null,
      at: now?.toISOString() ?? null,
    }
    const result = await send('call_for_help', args, forPerson ? { personId: forPerson } : {})
    setSent(result)
    if (result.state !== 'kept' && result.state !== 'accepted') return
    await draft.drop()
    onSent()
  }

  return (
    <CrewScreen
      isAboutCall
      why={lacksWhom ? <Why id={whySayWho}>{call.sayWho}</Why> : <WhyNot sent={sent} />}
      side={
        <Button kind="square" icon="left" onPress={onBack}>
          {common.back}
        </Button>
      }
      step={
        lacksWhom ? (
          <Button kind="call" wide state="off" describedBy={whySayWho}>
            {call.send}
          </Button>
        ) : (
          <SendCall isInjury={isInjury} onPress={() => void callForHelp()} />
        )
      }
    >
      <h1>{kind === 'lost_person' ? call.whoIsMissing : call.kinds[kind]}</h1>
      {isInjury && <Note icon="aid" lead={call.injuryFirst} />}
      {isInjury && <EmergencyCard />}
      {kind === 'lost_person' && (
        <WhoIsMissing whom={whom} onWhom={(next) => draft.write({ note, whom: next })} />
      )}
      {kind !== 'lost_person' && forPerson === null && <SentAlong place={place} />}
      <TextArea
        label={isInjury ? call.noteInjury : call.note}
        hint={isInjury ? call.noteInjuryHint : call.noteHint}
        value={note}
        rows={2}
        maxLength={longestNote}
        onChange={(next) => draft.write({ note: next, whom })}
      />
    </CrewScreen>
  )
}

/** Says to whom it goes, as far as this phone knows. */
function SendCall({ isInjury, onPress }: { isInjury: boolean; onPress: () => void }) {
  const { call } = useWords()
  const format = useFormat()
  const nameOf = useNameOf()
  const leads = useSelect(leadsHere)
  const to = leads.length === 0 ? call.goesToAll : call.goesTo(format.list(leads.map(nameOf)))
  return (
    <Button kind="call" wide icon="call" sub={to} onPress={onPress}>
      {isInjury ? call.sendInjury : call.send}
    </Button>
  )
}

/** What is sent along, so that a lead need not ask. */
function SentAlong({ place }: { place: Place | null }) {
  const { call } = useWords()
  const tagOf = useTagOf()
  if (place === null) return <Note icon="map">{call.nowhere}</Note>
  const tag = tagOf(place.tree)
  return <Note icon="map">{place.isInHand ? call.at(tag) : call.near(tag)}</Note>
}

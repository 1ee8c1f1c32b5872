'use client'

import type { Call } from '@/lib/events/state'
import { ageMs, useNow, usePrivatePeople, useSelect } from '@/lib/hooks'
import { useLeadWords } from '../crew/use-lead-words'
import { useFormat } from '../layout/use-format'
import { useNameOf, useTagOf } from '../sync/use-refusal-words'
import { Tag } from '../ui/Tag'

const justNowMs = 10_000

/** Where, who comes or for how long nobody does; of who is missing, when their phone was heard. */
export function CallNote({ call }: { call: Call }) {
  const { calls: text } = useLeadWords()
  const format = useFormat()
  const nameOf = useNameOf()
  const tagOf = useTagOf()
  const now = useNow(5_000)
  const me = useSelect((view) => view.me?.personId)
  const age = now === null ? 0 : ageMs(call, now)
  const state =
    call.answeredBy === null
      ? age < justNowMs
        ? text.justNow
        : text.nobodyYet(format.waiting(age))
      : call.answeredBy === me
        ? text.youCome
        : text.comes(nameOf(call.answeredBy))
  return (
    <span className="call-note">
      {call.tree !== null && <Tag>{tagOf(call.tree)}</Tag>}
      <span>{state}</span>
      {call.subject !== null && now !== null && <Heard personId={call.subject} now={now} />}
    </span>
  )
}

function Heard({ personId, now }: { personId: string; now: Date }) {
  const { calls: text } = useLeadWords()
  const format = useFormat()
  const people = usePrivatePeople()
  if (people.state !== 'read') return null
  const heardAt = people.value[personId]?.heardAt ?? null
  if (heardAt === null) return <span>{text.neverHeard}</span>
  const minutes = (now.getTime() - Date.parse(heardAt)) / 60_000
  return <span>{text.heard(format.duration(minutes))}</span>
}

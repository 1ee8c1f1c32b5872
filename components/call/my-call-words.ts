'use client'

import {
  ageMs,
  askEverybodyAfterMs,
  leadsHere,
  type OpenCall,
  useNow,
  useSelect,
} from '@/lib/hooks'
import { useFormat } from '../layout/use-format'
import { useWords } from '../layout/Words'
import { useNameOf, useTagOf } from '../sync/use-refusal-words'

export type MyCallWords = {
  isAnswered: boolean
  title: string
  /** What, where and since when. */
  facts: string
  /** What to do now. */
  note: string
}

/** Says to the caller what became of a call. */
export function useMyCallWords(): (call: OpenCall) => MyCallWords {
  const { call: text } = useWords()
  const format = useFormat()
  const nameOf = useNameOf()
  const tagOf = useTagOf()
  const now = useNow(1_000)
  const leads = useSelect(leadsHere)
  const me = useSelect((view) => view.me?.personId)
  const unsent = useSelect((view) => view.unsent.map(({ command }) => command.id))

  return (call) => {
    const age = now === null ? 0 : ageMs(call, now)
    const facts = [
      text.kinds[call.kind],
      ...(call.tree === null ? [] : [tagOf(call.tree)]),
      text.notYet(format.waiting(age)),
    ].join(' · ')
    if (unsent.includes(call.id))
      return { isAnswered: false, title: text.notSent, facts, note: text.notSentWay }
    if (call.answeredBy !== null)
      return {
        isAnswered: true,
        title: text.coming(nameOf(call.answeredBy)),
        facts,
        note: text.comingNote,
      }
    if (age >= askEverybodyAfterMs)
      return {
        isAnswered: false,
        title: text.nobodyFor(format.waiting(age)),
        facts,
        note: `${text.nobodyWay} ${text.askedAll}`,
      }
    const asked = leads.filter((id) => id !== me)
    return {
      isAnswered: false,
      title: text.sent,
      facts,
      note: asked.length === 0 ? text.askedAll : text.asked(format.list(asked.map(nameOf))),
    }
  }
}

'use client'

import { useEffect, useRef, useState } from 'react'

import { newCommandId, type Sent, useDraft, useSelect, useSend } from '@/lib/hooks'

import {
  type Entered,
  type Entry,
  emptyTyped,
  isToSend,
  outcomeOf,
  readEntry,
  type Typed,
} from './entry'
import { inSendingOrder } from './sending-order'

export type Sheet = { date: string; typed: Typed; entries: readonly Entry[] }

/** The lines of a sheet: on disk from the first letter, sent one by one under their own ids. */
export function useEntries(today: string) {
  const draft = useDraft<Sheet>('from-paper', { date: today, typed: emptyTyped, entries: [] })
  const send = useSend()
  const blocks = useSelect((view) => view.sheet?.blocks ?? [])
  const trees = useSelect((view) => view.sheet?.trees ?? [])
  const timeZone = useSelect((view) => view.state?.orchard.timeZone ?? 'UTC')
  const [sending, setSending] = useState<string | null>(null)
  // Answers come one after the other, and each is written beside the ones before.
  const latest = useRef(draft.value)
  useEffect(() => {
    latest.current = draft.value
  }, [draft.value])

  const readerOf = (date: string, lastBlock: number | null = null) => ({
    blocks,
    trees,
    timeZone,
    date,
    lastBlock,
  })
  const save = (entries: readonly Entry[]) => {
    latest.current = { ...latest.current, entries }
    return draft.writeNow(latest.current)
  }

  async function sendAll(): Promise<void> {
    const read = latest.current.entries.filter(isToSend).flatMap((entry) => {
      const whole = readEntry(entry.typed, readerOf(entry.date))
      return whole.state === 'whole' ? [{ entry, entered: whole.entered }] : []
    })
    for (const { entry, entered } of inSendingOrder(read)) {
      setSending(entry.id)
      const outcome = outcomeOf(await sendOne(entry.id, entered))
      await save(
        latest.current.entries.map((one) => (one.id === entry.id ? { ...one, outcome } : one))
      )
      // Without signal the next ones would only wait as long again.
      if (outcome.state === 'no_answer') break
    }
    setSending(null)
  }

  function sendOne(id: string, entered: Entered): Promise<Sent> {
    const whose = { id, personId: entered.person }
    switch (entered.name) {
      case 'enter_work':
        return send(entered.name, entered.args, whose)
      case 'enter_attendance':
        return send(entered.name, entered.args, whose)
      case 'flag_tree':
        return send(entered.name, entered.args, whose)
    }
  }

  return {
    sheet: draft.value,
    ready: draft.ready,
    sending,
    type: (typed: Typed) => draft.write({ ...latest.current, typed }),
    setDate: (date: string) => draft.write({ ...latest.current, date }),
    readerOf,
    add: (typed: Typed, next: Typed) => {
      const entry = { id: newCommandId(), date: latest.current.date, typed, outcome: null }
      latest.current = { ...latest.current, typed: next }
      return save([...latest.current.entries, entry])
    },
    takeOut: (id: string) => save(latest.current.entries.filter((one) => one.id !== id)),
    /** Back into the form; as a line it comes again under a new id, since a refusal is remembered too. */
    change: (entry: Entry) => {
      latest.current = { ...latest.current, typed: entry.typed, date: entry.date }
      return save(latest.current.entries.filter((one) => one.id !== entry.id))
    },
    putAway: (isDone: (entry: Entry) => boolean) =>
      save(latest.current.entries.filter((entry) => !isDone(entry))),
    sendAll,
  }
}

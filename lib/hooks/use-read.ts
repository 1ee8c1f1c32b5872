'use client'

/** Things that are read one at a time. */

import { useEffect, useState } from 'react'

import type { FaultCode, Outcome } from '@/lib/events/answer'
import { openShiftOf } from '@/lib/state/me'
import type {
  Briefing,
  CallRead,
  CameIn,
  FlagDetails,
  Incident,
  MyFlag,
  NotesOfRound,
  PrivatePeople,
  Reads,
  ShiftRecord,
  ToLookOver,
  ToolFaults,
  TreeNote,
} from '@/lib/state/reads'

import type { View } from '@/lib/state/view'

import { useComingClient } from './provider'
import { useSelect } from './use-select'

export type Reading<Value> =
  | { state: 'reading' }
  | { state: 'read'; value: Value }
  | { state: 'failed'; fault: FaultCode }

/** Read again when a newer version is written. */
export function useBriefing(shiftId: string | null): Reading<Briefing | null> {
  const version = useSelect((view) => view.state?.shifts[shiftId ?? '']?.briefingVersion ?? 0)
  return useRead(shiftId && `briefing|${shiftId}|${version}`, (reads) =>
    reads.briefing(shiftId ?? '', null)
  )
}

/** As it was said then. Null: none is wanted. */
export function useOldBriefing(
  shiftId: string | null,
  version: number | null
): Reading<Briefing | null> {
  return useRead(shiftId && version ? `old briefing|${shiftId}|${version}` : null, (reads) =>
    reads.briefing(shiftId ?? '', version)
  )
}

export function usePhoto(photoId: string | null): Reading<{ jpeg: string }> {
  return useRead(photoId && `photo|${photoId}`, (reads) => reads.photo(photoId ?? ''))
}

/** Of marked cuts; what was read once is there without signal. */
export function useMarkPhoto(photoId: string): Reading<{ jpeg: string }> {
  return useRead(`mark-photo|${photoId}`, (reads) => reads.markPhoto(photoId))
}

export function useTreeNotes(tree: number | null): Reading<TreeNote[]> {
  const version = useSelect((view) => {
    const flags = Object.values(view.confirmed?.flags ?? {})
    const here = flags.filter((flag) => flag.tree === tree).length
    const { work, marked } = view.confirmed ?? {}
    return `${here}|${work?.[tree ?? 0]?.state}|${marked?.[tree ?? 0]?.mark}`
  })
  return useRead(
    tree === null ? null : `notes|${tree}`,
    (reads) => reads.treeNotes(tree ?? 0),
    version
  )
}

/** For leads. Read again when somebody comes or goes. */
export function usePrivatePeople(): Reading<PrivatePeople> {
  const version = useSelect((view) => {
    const people = Object.keys(view.confirmed?.people ?? {}).length
    return `${people}|${openShiftOf(view)?.id}`
  })
  return useRead('people', (reads) => reads.privatePeople(), version)
}

/** For leads. Read again when another tool is out of use. */
export function useToolFaults(): Reading<ToolFaults> {
  const out = useSelect((view) =>
    Object.entries(view.confirmed?.tools ?? {})
      .flatMap(([no, { fit }]) => (fit ? [] : [no]))
      .join()
  )
  return useRead('faults', (reads) => reads.toolFaults(), out)
}

export function useCameIn(): Reading<CameIn> {
  // Whatever came in or was accepted is an event, and so the head is another.
  const head = useSelect((view) => view.confirmed?.head ?? 0)
  return useRead('came-in', (reads) => reads.cameIn(), String(head))
}

/** For leads: of this shift, with what was written. Read again whenever a call changes. */
export function useCalls(): Reading<CallRead[]> {
  const unsent = useSelect(incidentsUnsent)
  const version = useSelect((view) =>
    Object.entries(view.confirmed?.calls ?? {})
      .map(([id, { answeredBy }]) => `${id}|${answeredBy}`)
      .join()
  )
  return useRead('calls', (reads) => reads.calls(), `${version}|${unsent}`)
}

/** For leads. Read again when one that was written here has gone out; others' come the next time. */
export function useIncidents(): Reading<Incident[]> {
  const unsent = useSelect(incidentsUnsent)
  return useRead('incidents', (reads) => reads.incidents(), String(unsent))
}

function incidentsUnsent({ unsent }: View): number {
  return unsent.filter(({ command }) => command.name === 'write_incident').length
}

/** For leads. Read again when a tree is done, or was looked over. */
export function useToLookOver(): Reading<ToLookOver> {
  const version = useSelect(({ confirmed }) => {
    const done = Object.values(confirmed?.work ?? {}).filter(({ state }) => state === 'done')
    return `${done.length}|${Object.keys(confirmed?.lookedOver ?? {}).length}`
  })
  return useRead('look-over', (reads) => reads.toLookOver(), version)
}

/** For leads: the newest note on each tree, as it was when the screen was opened. */
export function useNotesOfRound(): Reading<NotesOfRound> {
  return useRead('notes-of-round', (reads) => reads.notesOfRound())
}

/** For leads: the numbers of a shift when the screen was opened. Null: of the one opened last. */
export function useShiftRecord(shiftId: string | null): Reading<ShiftRecord | null> {
  return useRead(`record|${shiftId}`, (reads) => reads.shiftRecord(shiftId))
}

/** For leads: what is written about these flags. Read again when there is more. */
export function useFlagDetails(flags: readonly string[]): Reading<FlagDetails> {
  const notes = useSelect((view) =>
    flags.map((id) => view.confirmed?.flags[id]?.notes ?? 0).join('|')
  )
  return useRead(
    flags.length === 0 ? null : `flags|${flags.join('|')}`,
    (reads) => reads.flagDetails(flags),
    notes
  )
}

/** What became of what I reported. Read again when one of them changes or ends. */
export function useMyFlags(): Reading<MyFlag[]> {
  const mine = useSelect((view) =>
    Object.entries(view.confirmed?.flags ?? {})
      .filter(([, { raisedBy }]) => raisedBy === view.me?.personId)
      .map(([id, { state }]) => `${id} ${state}`)
      .join('|')
  )
  return useRead('my-flags', (reads) => reads.myFlags(), mine)
}

/**
 * `key` says what is read; null: nothing yet. Another `version` reads it again behind what is shown, so that
 * nobody loses what they are reading or writing about; one that fails leaves what was read before.
 */
export function useRead<Value>(
  key: string | null,
  read: (reads: Reads) => Promise<Outcome<Value>>,
  version = ''
): Reading<Value> {
  const coming = useComingClient()
  const who = useSelect((view) => (view.phase === 'in' ? (view.me?.personId ?? null) : null))
  const isReached = useSelect((view) => view.signal === 'reached')
  const [result, setResult] = useState<{ key: string; reading: Reading<Value> } | null>(null)
  const wanted = key !== null && who !== null ? `${who}|${key}` : null

  // biome-ignore lint/correctness/useExhaustiveDependencies: `key` says what `read` reads; `version` and `isReached` ask again
  useEffect(() => {
    if (wanted === null) return
    let isOver = false
    void coming().then(async (rowcall) => {
      const reads = rowcall.reads()
      const told = reads && (await read(reads))
      if (isOver || !told) return
      setResult((before) => ({ key: wanted, reading: readingOf(told, before, wanted) }))
    })
    return () => {
      isOver = true
    }
  }, [coming, wanted, version, isReached])

  return result && result.key === wanted ? result.reading : { state: 'reading' }
}

function readingOf<Value>(
  told: Outcome<Value>,
  before: { key: string; reading: Reading<Value> } | null,
  key: string
): Reading<Value> {
  if (told.ok) return { state: 'read', value: told.value }
  if (before?.key === key && before.reading.state === 'read') return before.reading
  return { state: 'failed', fault: told.fault }
}

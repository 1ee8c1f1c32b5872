'use client'

/** Something half typed, kept on disk while it is typed. */

import { useCallback, useEffect, useRef, useState } from 'react'

import { useComingClient } from './provider'
import { useSelect } from './use-select'

export type Draft<Value> = {
  value: Value
  /** What was kept is read. */
  ready: boolean
  /** Kept a moment after the last change. */
  write: (value: Value) => void
  /** Resolves when it is on disk: wait for it before the camera opens. */
  writeNow: (value: Value) => Promise<void>
  drop: () => Promise<void>
}

const afterTypingMs = 300

export function useDraft<Value>(key: string, initial: Value): Draft<Value> {
  const coming = useComingClient()
  const owner = useSelect((view) => view.me && `${view.me.orchardId}|${view.me.personId}`)
  const [shown, setShown] = useState({ key, value: initial })
  // A panel goes on to the next tree: what was typed about the one before is not said of this one.
  if (shown.key !== key) setShown({ key, value: initial })
  const [readFor, setReadFor] = useState<string | null>(null)
  const pending = useRef<{ timer: ReturnType<typeof setTimeout>; value: Value } | null>(null)
  const isNewer = useRef(false)
  const name = `${owner}|${key}`
  const setValue = useCallback(
    (value: Value) => setShown((now) => (now.key === key ? { key, value } : now)),
    [key]
  )

  const writeNow = useCallback(
    async (next: Value) => {
      if (pending.current) clearTimeout(pending.current.timer)
      pending.current = null
      isNewer.current = true
      setValue(next)
      await (await coming()).drafts().write(key, next)
    },
    [coming, key, setValue]
  )
  const write = useCallback(
    (next: Value) => {
      if (pending.current) clearTimeout(pending.current.timer)
      const timer = setTimeout(() => void writeNow(next), afterTypingMs)
      pending.current = { timer, value: next }
      isNewer.current = true
      setValue(next)
    },
    [writeNow, setValue]
  )
  const drop = useCallback(async () => {
    if (pending.current) clearTimeout(pending.current.timer)
    pending.current = null
    await (await coming()).drafts().drop(key)
  }, [coming, key])

  // The last moment in which a page may still write: afterwards it is frozen or gone.
  useEffect(() => {
    const keep = () => {
      const unsaved = pending.current
      if (unsaved) void writeNow(unsaved.value)
    }
    const keepWhenHidden = () => document.visibilityState === 'hidden' && keep()
    addEventListener('pagehide', keep)
    document.addEventListener('visibilitychange', keepWhenHidden)
    return () => {
      removeEventListener('pagehide', keep)
      document.removeEventListener('visibilitychange', keepWhenHidden)
      keep()
    }
  }, [writeNow])

  useEffect(() => {
    let isOver = false
    isNewer.current = pending.current !== null
    void coming().then(async (rowcall) => {
      const kept = await rowcall.drafts().read(key)
      if (isOver) return
      // Only drafts of this key are written under it. What is typed meanwhile is newer, also once it is on disk.
      if (kept !== undefined && !isNewer.current) setValue(kept as Value)
      setReadFor(name)
    })
    return () => {
      isOver = true
    }
  }, [coming, key, name, setValue])

  return { value: shown.value, ready: readFor === name, write, writeNow, drop }
}

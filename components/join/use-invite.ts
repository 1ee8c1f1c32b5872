'use client'

import { useEffect, useState } from 'react'
import type { Fault } from '@/lib/events/answer'
import { type Invite, useRowcall } from '@/lib/hooks'

export type Look =
  | { state: 'looking' }
  | { state: 'found'; invite: Invite }
  | { state: 'over'; why: 'code_wrong' | NonNullable<Invite['over']> }
  | { state: 'failed'; fault: Fault; again: () => void }

/** What a code is good for, asked before a name is. */
export function useInvite(code: string): Look {
  const { lookAtInvite } = useRowcall()
  const [tries, setTries] = useState(0)
  const asked = `${code}|${tries}`
  const [look, setLook] = useState<{ asked: string; found: Look }>()

  useEffect(() => {
    let isOver = false
    void lookAtInvite(code).then((told) => {
      if (isOver) return
      setLook({ asked, found: lookOf(told, () => setTries((before) => before + 1)) })
    })
    return () => {
      isOver = true
    }
  }, [lookAtInvite, code, asked])

  return look?.asked === asked ? look.found : { state: 'looking' }
}

type Told = Awaited<ReturnType<ReturnType<typeof useRowcall>['lookAtInvite']>>

function lookOf(told: Told, again: () => void): Look {
  if (!told.ok) return { state: 'failed', fault: told, again }
  const why = told.value === null ? 'code_wrong' : told.value.over
  if (told.value === null || why !== null) return { state: 'over', why: why ?? 'code_wrong' }
  return { state: 'found', invite: told.value }
}

'use client'

/** Parts of what is seen. */

import { useRef, useSyncExternalStore } from 'react'

import { type Phase, startingView, type View } from '@/lib/state/view'

import { isEqual } from './is-equal'
import { useClient } from './provider'

const neverChanges = () => () => {}

/** Renders again only when the part is another one, not when it is only built anew. */
export function useSelect<Part>(select: (view: View) => Part): Part {
  const client = useClient()
  const last = useRef<{ part: Part } | null>(null)
  const read = (view: View) => {
    const part = select(view)
    if (last.current === null || !isEqual(last.current.part, part)) last.current = { part }
    return last.current.part
  }
  return useSyncExternalStore(
    client ? client.subscribe : neverChanges,
    () => read(client ? client.view() : startingView),
    () => read(startingView)
  )
}

export function usePhase(): Phase {
  return useSelect(phaseOf)
}

function phaseOf(view: View): Phase {
  return view.phase
}

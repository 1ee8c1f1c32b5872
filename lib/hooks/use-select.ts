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
  const last = useRef<{ view: View; select: (view: View) => Part; part: Part } | null>(null)
  const read = (view: View) => {
    const before = last.current
    // Asked twice about one view, React must get one answer, also where parts cannot be compared.
    if (before?.view === view && before.select === select) return before.part
    const built = select(view)
    const part = before && isEqual(before.part, built) ? before.part : built
    last.current = { view, select, part }
    return part
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

'use client'

import { useMemo } from 'react'

import { type Proposal, treesToLookOver } from '@/lib/domain/planning/look-over'
import { walksFrom } from '@/lib/domain/planning/walk'
import { groundOnFoot, isToLookOver, type ToLookOver, useSelect, useToLookOver } from '@/lib/hooks'

export type TreeToLookOver = ToLookOver['trees'][number]

const nobody: ToLookOver = { trees: [], people: {} }

/** What is done and not looked over, as far as it is not mine; and which of it comes next. */
export function useLookOver(from: number | null) {
  const reading = useToLookOver()
  const { trees, people } = reading.state === 'read' ? reading.value : nobody
  const me = useSelect((view) => view.me?.personId ?? '')
  const state = useSelect((view) => view.state)
  const asked = useSelect((view) =>
    view.unsent.flatMap(({ command }) => (command.name === 'look_over' ? [command.args.tree] : []))
  )
  const ground = useSelect(groundOnFoot)

  const open = useMemo(
    () =>
      trees.filter(
        (one) =>
          !one.people.includes(me) &&
          !asked.includes(one.tree) &&
          state !== null &&
          isToLookOver(state, one.tree)
      ),
    [trees, me, asked, state]
  )
  const proposals = useMemo(
    () => treesToLookOver(open, people, state?.workRoundId ?? ''),
    [open, people, state?.workRoundId]
  )
  const next = useMemo(() => nearest(proposals, from, ground), [proposals, from, ground])
  return { reading, open, proposals, next }
}

/** From where the lead stands; before the first tree, whoever is newest. */
function nearest(
  proposals: readonly Proposal[],
  from: number | null,
  ground: Parameters<typeof walksFrom>[0]
): Proposal | null {
  if (from === null) return proposals[0] ?? null
  const walkM = walksFrom(ground, from)
  return proposals.toSorted((a, b) => walkM(a.tree) - walkM(b.tree))[0] ?? null
}

/** What a person lacks before any tree, sorted for a lead who gets everybody ready. */

import { ofTheDay } from '@/lib/events/weather'
import { readinessOf, type View } from '@/lib/hooks'
import { claimWith } from './claims'

/** Said in the head of the screen, or no lack at all. */
const notTheirs = ['shift_not_open', 'stopped', 'holds_another', ...ofTheDay]

/** The referee's codes, without those that are the same for everybody. */
export function lacksOf(view: View, personId: string): string[] {
  const isLearning = claimWith(view, personId)?.people[personId] === 'learner'
  const codes = readinessOf(view, personId).map(({ code }) => code)
  return [...new Set(codes)].filter(
    (code) => !notTheirs.includes(code) && !(isLearning && code === 'no_tool_in_hand')
  )
}

export const groups = [
  'waiting',
  'late',
  'notReady',
  'readyGroup',
  'onBreak',
  'visitors',
  'notHere',
] as const
export type Group = (typeof groups)[number]

export function groupOf(view: View, personId: string): Group {
  const { state } = view
  const person = state?.people[personId]
  if (person?.admitted === false) return 'waiting'
  const there = state?.attendance[personId]
  if (!there) return 'notHere'
  if (person?.role === 'visitor') return 'visitors'
  if (there.state === 'break') return 'onBreak'
  if (cameAfterBriefing(view, personId)) return 'late'
  return lacksOf(view, personId).length > 0 ? 'notReady' : 'readyGroup'
}

/** Others were told, and this one was not there. Leads tell it, so they are never late. */
function cameAfterBriefing({ state }: View, personId: string): boolean {
  const briefed = state?.briefed ?? {}
  if (state?.people[personId]?.role !== 'volunteer') return false
  return (
    !briefed[personId]?.givenVersion && Object.values(briefed).some((one) => one.givenVersion > 0)
  )
}

export type PersonLine = { id: string; group: Group; lacks: string[] }

/** Everybody in the orchard: by group, then by name. */
export function peopleInOrder(view: View): PersonLine[] {
  return Object.keys(view.state?.people ?? {})
    .map((id) => ({ id, group: groupOf(view, id), lacks: lacksOf(view, id) }))
    .toSorted(
      (a, b) =>
        groups.indexOf(a.group) - groups.indexOf(b.group) ||
        (view.names[a.id] ?? '').localeCompare(view.names[b.id] ?? '')
    )
}

/** How many who came to work can begin, at a tree or not. Who is on a break cannot. */
export function countReady(view: View): { ready: number; here: number } {
  const crew = peopleInOrder(view).filter(({ group }) =>
    ['late', 'notReady', 'readyGroup', 'onBreak'].includes(group)
  )
  return { here: crew.length, ready: crew.filter(({ group }) => group === 'readyGroup').length }
}

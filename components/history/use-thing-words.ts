'use client'

import { nameOf, type ThingOfTree, type TreeHistory, useSelect } from '@/lib/hooks'
import { useFormat } from '../layout/use-format'
import { useWords } from '../layout/Words'
import { signWords } from '../tree/flag-words'

export type ThingSaid = { title: string; more: string[] }

/** Says one thing that happened at a tree, and all that this reader may know of it. */
export function useThingWords({
  names,
}: Pick<TreeHistory, 'names'>): (thing: ThingOfTree) => ThingSaid {
  const words = useWords()
  const { history: text } = words
  const format = useFormat()
  const known = useSelect((view) => view.names)
  const unsent = useSelect((view) => view.unsent)
  const name = (id: string) =>
    names[id] ?? nameOf({ names: known, unsent }, id) ?? words.claim.somebody
  const dayOf = (at: string) => format.fullDate(new Date(at))

  return (thing) => {
    const who = name(thing.person)
    switch (thing.what) {
      case 'done':
        return said(text.done(who), visitMore(thing))
      case 'begun':
        return said(text.begun(who, format.share((thing.share ?? 0) / 100)), visitMore(thing))
      case 'also_worked':
        return said(text.alsoWorked(who), visitMore(thing))
      case 'passed':
        return said(text.passed(who))
      case 'reopened': {
        const found = thing.reason ? words.lookedOver.reasons[thing.reason].found : ''
        return said(text.reopened(who, found.toLowerCase()))
      }
      case 'mark':
        return said(text.mark(who), [thing.endedAt !== null && text.markOver])
      case 'flag':
        return said(text.flag(signWords(words, thing.kind, thing.sign), who), flagMore(thing))
      case 'photo':
        return said(text.photo(who))
    }
  }

  function visitMore({ with: others, seconds, late, paper }: Visit): (string | false)[] {
    return [
      others.length > 0 && text.with(format.list(others.map(name))),
      seconds !== null && seconds >= 30 && text.took(format.duration(seconds / 60)),
      late && text.late,
      paper && text.paper,
    ]
  }

  function flagMore(flag: Flag): (string | false)[] {
    const { state, confirmedBy, endedBy, endedAt, endedNote, doneBy, doneOn } = flag
    const by = endedBy === null ? '' : name(endedBy)
    const on = endedAt === null ? '' : dayOf(endedAt)
    return [
      confirmedBy !== null && text.confirmedBy(name(confirmedBy)),
      state === 'withdrawn' && text.withdrawnBy(by, on),
      state === 'cleared' && text.clearedBy(by, on),
      doneBy !== null && doneOn !== null && text.doneBy(doneBy, dayOf(`${doneOn}T12:00:00Z`)),
      endedNote ?? false,
      endedAt === null && confirmedBy === null && text.flagStates[state],
    ]
  }
}

type Visit = Extract<ThingOfTree, { with: string[] }>
type Flag = Extract<ThingOfTree, { what: 'flag' }>

function said(title: string, more: readonly (string | false)[] = []): ThingSaid {
  return { title, more: more.filter((part) => part !== false) }
}

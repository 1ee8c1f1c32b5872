'use client'

import { openShiftOf, stopToAnswerBy, useSelect, useSend } from '@/lib/hooks'
import { routes } from '@/lib/routes'
import { useFormat } from '../layout/use-format'
import { useWords } from '../layout/Words'
import { Button } from '../ui/Button'
import { ButtonLink } from '../ui/ButtonLink'
import { Panel } from '../ui/Panel'
import { AskedNote } from './AskedNote'
import { useAsk } from './use-ask'
import { useLeadWords } from './use-lead-words'

type PersonPart = { id: string; name: string }

/** Counted in, on a break, gone home; and their answer to a stop. */
export function PersonDay({ id, name }: PersonPart) {
  const { refusals, call } = useWords()
  const { people: text } = useLeadWords()
  const format = useFormat()
  const send = useSend()
  const { asked, ask } = useAsk()
  const there = useSelect((view) => view.state?.attendance[id] ?? null)
  const isOpen = useSelect((view) => openShiftOf(view) !== null)
  const toAnswer = useSelect((view) => stopToAnswerBy(view, id))
  const isAdmitted = useSelect((view) => view.state?.people[id]?.admitted ?? false)
  const forThem = { personId: id }
  const since = there ? format.clock(new Date(there.since)) : ''

  return (
    <Panel title={text.day}>
      <div className="stack">
        {!there && <p>{text.notCounted}</p>}
        {there?.state === 'here' && <p>{text.arrivedAt(since)}</p>}
        {there?.state === 'break' && <p>{text.onBreakSince(since)}</p>}
        {!isOpen && <p className="small">{refusals.shift_not_open({})}</p>}
        <AskedNote asked={asked} whose={name} />
        <div className="tree-buttons">
          {toAnswer && (
            <Button
              kind="call"
              onPress={() => {
                const { stop, answer } = toAnswer
                void ask(send('answer_stop', { stop: stop.id, answer }, forThem))
              }}
            >
              {toAnswer.answer === 'stopped' ? text.hasStopped(name) : text.knowsWorkGoesOn(name)}
            </Button>
          )}
          {!isAdmitted && (
            <Button onPress={() => ask(send('admit_person', { subject: id }))}>
              {text.admitPerson(name)}
            </Button>
          )}
          {isOpen && isAdmitted && !there && (
            <Button onPress={() => ask(send('arrive', {}, forThem))}>{text.arrive}</Button>
          )}
          {there?.state === 'here' && (
            <Button onPress={() => ask(send('start_break', {}, forThem))}>{text.startBreak}</Button>
          )}
          {there?.state === 'break' && (
            <Button onPress={() => ask(send('end_break', {}, forThem))}>{text.endBreak}</Button>
          )}
          {there && (
            <ButtonLink icon="call" href={routes.callFor(id)}>
              {call.titleFor(name)}
            </ButtonLink>
          )}
          {there && <Button onPress={() => ask(send('leave', {}, forThem))}>{text.leave}</Button>}
        </div>
      </div>
    </Panel>
  )
}

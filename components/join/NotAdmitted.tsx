'use client'

import { useSelect } from '@/lib/hooks'
import { useDoorWords } from '../layout/Words'
import { Note } from '../ui/Note'
import { JoinFrame } from './JoinFrame'
import { LanguageFirst } from './LanguageFirst'
import { OtherPeople } from './OtherPeople'

/** Joined outside an open shift, or by a link for one who leads: somebody lets each person in. The page goes on by itself. */
export function NotAdmitted() {
  const { join } = useDoorWords()
  const me = useSelect((view) => view.me)
  const name = me?.personName ?? ''
  const isToLead = me?.role === 'lead' || me?.role === 'manager'
  return (
    <JoinFrame bench={<OtherPeople />}>
      <h1>{isToLead ? join.leadWaitTitle : join.waitTitle}</h1>
      <p>{isToLead ? join.leadWaitWhy(name) : join.waitWhy(name)}</p>
      <Note icon="clock" role="status">
        {join.waitNote}
      </Note>
      <LanguageFirst />
    </JoinFrame>
  )
}

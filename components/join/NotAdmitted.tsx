'use client'

import { useSelect } from '@/lib/hooks'
import { useDoorWords } from '../layout/Words'
import { Note } from '../ui/Note'
import { JoinFrame } from './JoinFrame'
import { LanguageFirst } from './LanguageFirst'
import { OtherPeople } from './OtherPeople'

/** Joined outside an open shift: a lead lets each person in. The page goes on by itself. */
export function NotAdmitted() {
  const { join } = useDoorWords()
  const me = useSelect((view) => view.me)
  return (
    <JoinFrame bench={<OtherPeople />}>
      <h1>{join.waitTitle}</h1>
      <p>{join.waitWhy(me?.personName ?? '')}</p>
      <Note icon="clock" role="status">
        {join.waitNote}
      </Note>
      <LanguageFirst />
    </JoinFrame>
  )
}

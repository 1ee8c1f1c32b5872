'use client'

import { useEffect } from 'react'

import { type PrivatePeople, useNow, usePrivatePeople } from '@/lib/hooks'

/** Reads anew each minute whose phone was heard and their last tree. Draws nothing. */
export function ContactsEachMinute({ onRead }: { onRead: (people: PrivatePeople) => void }) {
  const minute = Math.floor((useNow(60_000)?.getTime() ?? 0) / 60_000)
  return <ReadOnce key={minute} onRead={onRead} />
}

function ReadOnce({ onRead }: { onRead: (people: PrivatePeople) => void }) {
  const people = usePrivatePeople()
  useEffect(() => {
    if (people.state === 'read') onRead(people.value)
  }, [people, onRead])
  return null
}

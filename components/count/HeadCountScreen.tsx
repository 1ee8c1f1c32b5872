'use client'

import { useState } from 'react'

import { type PrivatePeople, stopInForce, useSelect } from '@/lib/hooks'
import { LeadScreen } from '../crew/LeadScreen'
import { ContactsEachMinute } from './ContactsEachMinute'
import { CountNow } from './CountNow'
import { StopCount } from './StopCount'
import './count.css'

/** Everybody accounted for: in a stop by their answers, else whenever a lead counts. */
export function HeadCountScreen() {
  const stop = useSelect(stopInForce)
  const [contacts, setContacts] = useState<PrivatePeople>({})
  return (
    <LeadScreen here="people" isAboutStop={stop !== null}>
      <ContactsEachMinute onRead={setContacts} />
      {stop === null ? (
        <CountNow contacts={contacts} />
      ) : (
        <StopCount key={stop.id} stop={stop} contacts={contacts} />
      )}
    </LeadScreen>
  )
}

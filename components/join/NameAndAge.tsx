'use client'

import { useState } from 'react'

import type { Invite } from '@/lib/hooks'
import { formatFor } from '@/lib/text/format'
import type { DoorMessages } from '@/lib/text/messages'
import { useDoorWords, useLanguage } from '../layout/Words'
import { WhyNot } from '../sync/WhyNot'
import { Button } from '../ui/Button'
import { Segmented } from '../ui/Segmented'
import { TextField } from '../ui/TextField'
import { useTries } from '../ui/use-tries'
import { Why } from '../ui/Why'
import { JoinFrame } from './JoinFrame'
import { LanguageFirst } from './LanguageFirst'
import { useGettingIn } from './use-getting-in'

type AgeBand = 'adult' | 'minor'

const longestName = 60

/** Two answers and one button. A lead or manager is an adult, so they are asked for a name only. */
export function NameAndAge({ code, invite }: { code: string; invite: Invite }) {
  const { join } = useDoorWords()
  const { isAsking, sent, getIn } = useGettingIn()
  const [name, setName] = useState('')
  const [ageBand, setAgeBand] = useState<AgeBand | null>(null)
  const { wasTried: isTried, tried } = useTries()
  const asksAge = invite.role === 'volunteer'
  const fault = nameFault(name, join)
  const lacksAge = asksAge && ageBand === null

  function submit() {
    tried()
    if (fault !== null || lacksAge) return
    void getIn({ code, name: name.trim(), ageBand: ageBand ?? 'adult' })
  }

  return (
    <form
      onSubmit={(event) => {
        event.preventDefault()
        submit()
      }}
    >
      <JoinFrame
        bench={
          <>
            {isTried && lacksAge && <Why tone="wrong">{join.sayAge}</Why>}
            <WhyNot sent={sent} />
            <Button kind="call" type="submit" state={isAsking ? 'waiting' : 'ready'}>
              {isAsking ? join.joining : join.joinCrew}
            </Button>
            {invite.shiftDate !== null && <p className="small after">{join.linkUntilClose}</p>}
          </>
        }
      >
        <div>
          <h1>{invite.orchardName}</h1>
          <WhatItIs invite={invite} />
        </div>
        <LanguageFirst />
        <TextField
          label={join.yourName}
          hint={join.whoSeesIt}
          fault={isTried && fault}
          value={name}
          onChange={setName}
          autoComplete="name"
          required
        />
        {asksAge && (
          <Segmented
            label={join.ageQuestion}
            options={[
              { value: 'adult', label: join.adult },
              { value: 'minor', label: join.minor },
            ]}
            value={ageBand}
            onChange={setAgeBand}
          />
        )}
      </JoinFrame>
    </form>
  )
}

function WhatItIs({ invite }: { invite: Invite }) {
  const { join } = useDoorWords()
  const language = useLanguage()
  if (invite.role === 'lead') return <p className="muted">{join.forLead}</p>
  if (invite.role === 'manager') return <p className="muted">{join.forManager}</p>
  if (invite.shiftDate === null) return <p className="muted">{join.noShiftYet}</p>
  // A date without a time: noon in Greenwich is that day wherever it is written in Greenwich.
  const { day } = formatFor({ language, units: 'metric', timeZone: 'UTC' })
  return <p className="muted">{join.shiftOn(day(new Date(`${invite.shiftDate}T12:00:00Z`)))}</p>
}

function nameFault(name: string, text: DoorMessages['join']): string | null {
  if (name.trim() === '') return text.writeName
  return name.trim().length > longestName ? text.nameTooLong : null
}

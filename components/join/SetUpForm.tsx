'use client'

import { useState } from 'react'

import { type Sent, useRowcall } from '@/lib/hooks'
import { routes } from '@/lib/routes'
import { useGo } from '../layout/use-go'
import { useDoorWords, useLanguage, useLeadWords } from '../layout/Words'
import { Button } from '../ui/Button'
import { Segmented } from '../ui/Segmented'
import { SelectField } from '../ui/SelectField'
import { TextField } from '../ui/TextField'
import { useTries } from '../ui/use-tries'
import { JoinFrame } from './JoinFrame'
import { faultsOf, type NewOrchard, timeZoneHere, timeZones, unitsIn } from './new-orchard'
import { forgetCode } from './use-code'
import { WhyNotMade } from './WhyNotMade'

type SetUpFormProps = { code: string; onArchive: () => void }

/** Five answers, three of them proposed by the device. */
export function SetUpForm({ code, onArchive }: SetUpFormProps) {
  const { setUp, takeOut } = useLeadWords()
  const { common } = useDoorWords()
  const language = useLanguage()
  const go = useGo()
  const { createOrchard } = useRowcall()
  const [orchard, setOrchard] = useState<NewOrchard>(() => ({
    name: '',
    personName: '',
    timeZone: timeZoneHere(),
    language,
    units: unitsIn(navigator.language),
  }))
  const [zones] = useState(() => timeZones(orchard.timeZone))
  const { wasTried: isTried, tried } = useTries()
  const [isAsking, setIsAsking] = useState(false)
  const [sent, setSent] = useState<Sent | null>(null)
  const faults = isTried ? faultsOf(orchard) : []
  const write = (change: Partial<NewOrchard>) => setOrchard((before) => ({ ...before, ...change }))

  async function make() {
    tried()
    if (isAsking || faultsOf(orchard).length > 0) return
    setIsAsking(true)
    const { name, personName } = orchard
    const answer = await createOrchard({
      ...orchard,
      code,
      name: name.trim(),
      personName: personName.trim(),
    })
    setSent(answer)
    setIsAsking(false)
    if (answer.state !== 'accepted') return
    forgetCode()
    go.replace(routes.home())
  }

  return (
    <form
      onSubmit={(event) => {
        event.preventDefault()
        void make()
      }}
    >
      <JoinFrame
        bench={
          <>
            <WhyNotMade sent={sent} />
            <Button kind="call" type="submit" state={isAsking ? 'waiting' : 'ready'}>
              {isAsking ? setUp.making : setUp.make}
            </Button>
          </>
        }
      >
        <div>
          <h1>{setUp.title}</h1>
          <p className="muted">{setUp.why}</p>
        </div>
        <TextField
          label={setUp.orchardName}
          hint={setUp.orchardNameHint}
          fault={faults.includes('name') && setUp.writeOrchardName}
          value={orchard.name}
          onChange={(name) => write({ name })}
          autoComplete="off"
          required
        />
        <TextField
          label={setUp.yourName}
          hint={setUp.yourNameHint}
          fault={faults.includes('personName') && setUp.writeYourName}
          value={orchard.personName}
          onChange={(personName) => write({ personName })}
          autoComplete="name"
          required
        />
        <SelectField
          label={setUp.timeZone}
          hint={setUp.timeZoneHint}
          options={zones}
          value={orchard.timeZone}
          onChange={(timeZone) => write({ timeZone })}
        />
        <Segmented
          label={setUp.language}
          options={[
            { value: 'en', label: common.english, lang: 'en' },
            { value: 'es', label: common.spanish, lang: 'es' },
          ]}
          value={orchard.language}
          onChange={(chosen) => write({ language: chosen })}
        />
        <Segmented
          label={setUp.units}
          options={[
            { value: 'metric', label: setUp.metric },
            { value: 'us', label: setUp.us },
          ]}
          value={orchard.units}
          onChange={(units) => write({ units })}
        />
        <Button onPress={onArchive}>{takeOut.inInstead}</Button>
      </JoinFrame>
    </form>
  )
}

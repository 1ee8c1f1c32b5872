'use client'

import { useState } from 'react'

import { useSelect, useSend } from '@/lib/hooks'
import { routes } from '@/lib/routes'
import { AskedNote } from '../crew/AskedNote'
import { useAsk } from '../crew/use-ask'
import { useLeadWords, useWords } from '../layout/Words'
import { Button } from '../ui/Button'
import { ButtonLink } from '../ui/ButtonLink'
import { Panel } from '../ui/Panel'
import { Segmented } from '../ui/Segmented'
import { TextField } from '../ui/TextField'
import { useTries } from '../ui/use-tries'
import { Room } from './Room'

type Settings = { name: string; language: 'en' | 'es'; units: 'metric' | 'us' }

const longestName = 80

/** What the orchard says about itself; cards and rules have screens of their own. */
export function SettingsScreen() {
  const { settings: text } = useLeadWords()
  const zone = useSelect((view) => view.state?.orchard.timeZone ?? '')
  const orchard = useSelect((view) => view.state?.orchard ?? null)
  return (
    <Room title={text.title} reads>
      {orchard && <SettingsForm kept={orchard} />}
      <Panel title={text.zone(zone)}>
        <p>{text.zoneNote}</p>
      </Panel>
      <Panel title={text.cardTitle}>
        <div className="stack">
          <p>{text.cardNote}</p>
          <div className="room-buttons">
            <ButtonLink icon="aid" href={routes.emergency()}>
              {text.toCard}
            </ButtonLink>
            <ButtonLink href={routes.houseRules()}>{text.toRules}</ButtonLink>
          </div>
        </div>
      </Panel>
    </Room>
  )
}

function SettingsForm({ kept }: { kept: Settings }) {
  const { common } = useWords()
  const { settings: text, setUp } = useLeadWords()
  const send = useSend()
  const [typed, setTyped] = useState<Partial<Settings>>({})
  const [isKept, setIsKept] = useState(false)
  const { asked, isAsking, ask } = useAsk()
  const { wasTried, tried } = useTries()
  const shown = { ...kept, ...typed }
  const name = shown.name.trim()
  const isNameWrong = name === '' || name.length > longestName
  // Only what differs is sent, so that two managers do not undo each other.
  const changed = Object.fromEntries(
    Object.entries({ name, language: shown.language, units: shown.units }).filter(
      ([key, value]) => value !== kept[key as keyof Settings]
    )
  )
  const isChanged = Object.keys(changed).length > 0
  const write = (change: Partial<Settings>) => {
    setIsKept(false)
    setTyped({ ...typed, ...change })
  }
  const save = () => {
    tried()
    if (isNameWrong || !isChanged) return
    void ask(send('change_orchard', changed), () => {
      setTyped({})
      setIsKept(true)
    })
  }
  return (
    <div className="room-form">
      <TextField
        label={text.name}
        value={shown.name}
        onChange={(next) => write({ name: next })}
        fault={wasTried && isNameWrong && text.writeName}
        autoComplete="off"
        maxLength={longestName}
      />
      <Segmented
        label={text.language}
        options={[
          { value: 'en', label: common.english, lang: 'en' },
          { value: 'es', label: common.spanish, lang: 'es' },
        ]}
        value={shown.language}
        onChange={(language) => write({ language })}
      />
      <p className="small">{text.languageNote}</p>
      <Segmented
        label={text.units}
        options={[
          { value: 'metric', label: setUp.metric },
          { value: 'us', label: setUp.us },
        ]}
        value={shown.units}
        onChange={(units) => write({ units })}
      />
      <p className="small">{text.unitsNote}</p>
      <AskedNote asked={asked} />
      <p role="status">{isKept && !isChanged ? text.saved : ''}</p>
      {isChanged ? (
        <Button kind="call" state={isAsking ? 'waiting' : 'ready'} onPress={save}>
          {text.save}
        </Button>
      ) : (
        <>
          <p className="small" id="settings-same">
            {text.nothing}
          </p>
          <Button state="off" describedBy="settings-same">
            {text.save}
          </Button>
        </>
      )}
    </div>
  )
}

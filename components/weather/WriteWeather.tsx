'use client'

import { useId, useState } from 'react'

import { noRainInH } from '@/lib/domain/safety/weather'
import { beaufortOf } from '@/lib/domain/safety/wind'
import { useSelect, useSend } from '@/lib/hooks'
import { AskedNote } from '../crew/AskedNote'
import { useAsk } from '../crew/use-ask'
import { useLeadWords } from '../crew/use-lead-words'
import { useFormat } from '../layout/use-format'
import { Button } from '../ui/Button'
import { CheckRow } from '../ui/CheckRow'
import { ChoiceGroup } from '../ui/ChoiceGroup'
import { Note } from '../ui/Note'
import { Pick } from '../ui/Pick'
import { Segmented } from '../ui/Segmented'
import { Stepper } from '../ui/Stepper'
import { Why } from '../ui/Why'
import { argsFrom, draftFrom, isEmpty, type Measure, stepped } from './reading-draft'

const rains = [0, 6, 24, 48, noRainInH] as const

/** Ten seconds: what the lead sees, hears and feels. What is not said stays unknown. */
export function WriteWeather({ isCalled }: { isCalled: boolean }) {
  const { weather: text } = useLeadWords()
  const format = useFormat()
  const send = useSend()
  const rainName = useId()
  const whyId = useId()
  const { asked, ask, isAsking } = useAsk()
  const latest = useSelect((view) => view.state?.weather.latest ?? null)
  const units = useSelect((view) => view.state?.orchard.units ?? 'metric')
  const [draft, setDraft] = useState(() => draftFrom(latest))
  const [thunder, setThunder] = useState(false)
  const [isWritten, setIsWritten] = useState(false)

  const change = (next: Partial<typeof draft>) => {
    setIsWritten(false)
    setDraft({ ...draft, ...next })
  }
  const stepperOf = (measure: Measure, label: string, shown: (value: number) => string) => {
    const value = draft[measure]
    const step = (direction: 1 | -1) =>
      change({ [measure]: stepped(value, direction, { measure, units }) })
    return {
      label,
      shown: value === null ? text.notSaid : shown(value),
      less: { label: text.lessOf(label), onPress: () => step(-1) },
      more: { label: text.moreOf(label), onPress: () => step(1) },
      clear:
        value === null
          ? undefined
          : { label: text.leaveOut(label), onPress: () => change({ [measure]: null }) },
    }
  }
  const nothing = isEmpty(draft) && !thunder

  return (
    <div className="stack">
      <CheckRow checked={thunder} onChange={setThunder} hint={text.thunderNote}>
        {text.thunder}
      </CheckRow>
      <Segmented
        label={text.wood}
        options={[
          { value: 'dry', label: text.dry, icon: 'sun' },
          { value: 'wet', label: text.wet, icon: 'drop' },
        ]}
        value={draft.canopy}
        onChange={(canopy) => change({ canopy })}
      />
      <div className="steppers">
        <Stepper {...stepperOf('gustKmh', text.gust, format.speed)} hint={signOf(draft.gustKmh)} />
        <Stepper {...stepperOf('temperatureC', text.temperature, format.temperature)} />
        <Stepper {...stepperOf('humidity', text.humidity, (value) => format.share(value / 100))} />
      </div>
      <ChoiceGroup label={text.rain} as="picks">
        {rains.map((hours) => (
          <Pick
            key={hours}
            type="radio"
            name={rainName}
            checked={draft.rainInH === hours}
            onChange={() => change({ rainInH: hours, ...(hours === 0 && { canopy: 'wet' }) })}
          >
            {rainWords(hours)}
          </Pick>
        ))}
      </ChoiceGroup>
      {latest && <p className="small">{text.starts}</p>}
      <AskedNote asked={asked} />
      {isWritten && (
        <Note tone="done" icon="check" role="status">
          {text.written}
        </Note>
      )}
      {nothing && <Why id={whyId}>{text.nothing}</Why>}
      {nothing ? (
        <Button kind={isCalled ? 'call' : 'plain'} wide state="off" describedBy={whyId}>
          {text.save}
        </Button>
      ) : (
        <Button
          kind={isCalled ? 'call' : 'plain'}
          wide
          icon={thunder ? 'warn' : undefined}
          sub={text.saveNote}
          state={isAsking ? 'waiting' : 'ready'}
          onPress={() =>
            ask(send('write_weather', argsFrom(draft, thunder)), () => {
              setThunder(false)
              setIsWritten(true)
            })
          }
        >
          {thunder ? text.saveThunder : text.save}
        </Button>
      )}
    </div>
  )

  /** What such a gust does to trees: most leads have no instrument. */
  function signOf(gustKmh: number | null): string | undefined {
    return gustKmh === null ? undefined : text.signs[beaufortOf(gustKmh)]
  }

  function rainWords(hours: number): string {
    if (hours === 0) return text.rainNow
    return hours === noRainInH ? text.noRain : text.rainWithin(hours)
  }
}

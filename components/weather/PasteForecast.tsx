'use client'

import { useState } from 'react'

import { textOfFile } from '@/lib/domain/orchard/file-text'
import { type HourlyProblem, readHourly } from '@/lib/domain/safety/hourly-csv'
import { useSelect, useSend } from '@/lib/hooks'
import { instantAt } from '@/lib/util/clock-in'
import { FileButton } from '../bring-in/FileButton'
import { AskedNote } from '../crew/AskedNote'
import { useAsk } from '../crew/use-ask'
import { useLeadWords } from '../crew/use-lead-words'
import { useLanguage } from '../layout/Words'
import { Button } from '../ui/Button'
import { Note } from '../ui/Note'
import { TextArea } from '../ui/TextArea'

const mostShown = 3
const mostHours = 400
const mostBytes = 200_000

/** Hours from anywhere, pasted or out of a file; what is wrong is said by its line. */
export function PasteForecast() {
  const { weather: text } = useLeadWords()
  const send = useSend()
  const { asked, ask, isAsking } = useAsk()
  const zone = useSelect((view) => view.state?.orchard.timeZone ?? 'UTC')
  const isUs = useSelect((view) => view.state?.orchard.units === 'us')
  const language = useLanguage()
  const [pasted, setPasted] = useState('')
  const read = readHourly(pasted, { dayFirst: !isUs || language === 'es' })
  const hours = read.rows.slice(0, mostHours).flatMap((row) => {
    const from = instantAt(row.day, row.time, zone)
    const { temperatureC, humidity, windKmh, gustKmh, rainMm } = row
    return from === null ? [] : [[from, temperatureC, humidity, windKmh, gustKmh, rainMm]]
  })
  const isTyped = pasted.trim() !== ''

  return (
    <div className="stack">
      <TextArea
        label={text.paste}
        hint={text.pasteHint}
        value={pasted}
        onChange={setPasted}
        fault={isTyped && read.problems.length > 0 && <Problems problems={read.problems} />}
        maxLength={60_000}
      />
      <div className="row wrap">
        <FileButton
          label={text.openFile}
          isCalled={false}
          accept=".csv,.tsv,.txt,text/csv,text/plain"
          onFile={async (file) => {
            if (!file || file.size > mostBytes) return
            const found = textOfFile(new Uint8Array(await file.arrayBuffer()))
            setPasted(found.text ?? '')
          }}
        />
        {hours.length > 0 && (
          <Button
            state={isAsking ? 'waiting' : 'ready'}
            onPress={() => ask(send('bring_in_forecast', { hours }), () => setPasted(''))}
          >
            {text.use(hours.length)}
          </Button>
        )}
      </div>
      <AskedNote asked={asked} />
      {isTyped && hours.length === 0 && read.problems.length === 0 && <Note>{text.useNone}</Note>}
    </div>
  )
}

function Problems({ problems }: { problems: readonly HourlyProblem[] }) {
  const { problems: text } = useLeadWords().weather
  const said = (problem: HourlyProblem) =>
    'line' in problem ? text[problem.code](problem.line, problem.text) : text[problem.code]
  const more = problems.length - mostShown
  return (
    <>
      {problems.slice(0, mostShown).map(said).join(' ')}
      {more > 0 && ` ${text.more(more)}`}
    </>
  )
}

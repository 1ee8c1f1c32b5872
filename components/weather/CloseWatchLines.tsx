import { highOf, usualHighOf } from '@/lib/domain/safety/close-watch'
import type { Format } from '@/lib/text/format'
import type { LeadMessages } from '@/lib/text/messages'
import { groupBy } from '@/lib/util/group-by'
import { Note } from '../ui/Note'
import type { CloseWatch } from './use-close-watch'

type CloseWatchLinesProps = {
  watch: CloseWatch
  text: LeadMessages['closeWatch']
  format: Format
  nameOf: (id: string) => string
}

/** Names only while it is warm; before that one quiet line says that there will be some. */
export function CloseWatchLines({ watch, text, format, nameOf }: CloseWatchLinesProps) {
  const { heatWave, highs, newPeople } = watch
  if (!watch.isWarm) {
    if (newPeople === null || newPeople.length === 0) return null
    return <p className="small">{text.whenWarm(newPeople.length)}</p>
  }
  const [high, usual] = [highOf(highs), usualHighOf(highs)]
  const isWave = heatWave === 'yes' && high !== null && usual !== null
  return (
    <section className="stack" aria-label={text.title}>
      <h3>{text.title}</h3>
      {isWave && (
        <Note tone="stop" icon="eye">
          {text.wave(format.temperature(high), format.temperature(usual))}
        </Note>
      )}
      {heatWave === 'unknown' && <p>{text.waveUnknown}</p>}
      {newPeople === null && <p>{text.namesUnknown}</p>}
      {newPeople !== null && newPeople.length > 0 && (
        <>
          <ul className="rests">
            {[...groupBy(newPeople, ({ day }) => day)].map(([day, them]) => (
              <li key={day}>{text.names(format.list(them.map(({ id }) => nameOf(id))), day)}</li>
            ))}
          </ul>
          <p className="small">{text.counted}</p>
        </>
      )}
      <p className="small">{text.source}</p>
    </section>
  )
}

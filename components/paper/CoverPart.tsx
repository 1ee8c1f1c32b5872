'use client'

import { useSelect } from '@/lib/hooks'
import { useLeadWords } from '../crew/use-lead-words'
import { isUnwritten, numbersToCall } from '../day/emergency-lines'
import { inDegrees } from '../day/where-we-are'
import { useFormat } from '../layout/use-format'
import { useWords } from '../layout/Words'
import { useHoursWords } from '../shift/use-hours-words'
import { useAsOf } from './use-as-of'
import { useShiftOnPaper } from './use-shift-on-paper'

const lines = [
  'where',
  'access',
  'call',
  'hospital',
  'first_aid',
  'first_aider',
  'meeting_point',
] as const

/** The orchard, the day, the signal for stop, and what is said when somebody is hurt. */
export function CoverPart() {
  const { help, things } = useWords()
  const { paper: text } = useLeadWords()
  const format = useFormat()
  const asOf = useAsOf()
  const hoursWords = useHoursWords()
  const orchard = useSelect((view) => view.state?.orchard.name ?? '')
  const card = useSelect((view) => view.emergency)
  const zone = useSelect((view) => view.state?.orchard.timeZone ?? 'UTC')
  const blocks = useSelect((view) => [...view.ground.blocks.values()])
  const shift = useShiftOnPaper()
  const numbers = numbersToCall(card ?? {}, zone)

  return (
    <section className="paper-sheet" aria-label={text.part.cover}>
      <header>
        <p className="as-of">{asOf}</p>
        <h2>{orchard}</h2>
        <p className="lead">{shift ? hoursWords(shift) : text.noShift}</p>
      </header>
      {shift && (
        <p className="framed">
          <b>{text.stopSignal}</b>
          <span className="shout">{things.signal[shift.signal]}</span>
        </p>
      )}
      <p>
        <b>{text.since}</b>
      </p>
      <div className="framed">
        <h3>{text.emergency}</h3>
        {(card === null || isUnwritten(card)) && (
          <p>{card === null ? help.cardNotHere : help.noCard}</p>
        )}
        {numbers.map(({ number }) => (
          <p key={number} className="shout">
            {help.callFirst(number)}
          </p>
        ))}
        {numbers.length === 0 && <p>{help.noNumber}</p>}
        <dl>
          {lines.map(
            (line) =>
              card?.[line] && (
                <div key={line}>
                  <dt>{help[line]}</dt>
                  <dd>{card[line]}</dd>
                </div>
              )
          )}
          <div>
            <dt>{text.coordinates}</dt>
            <dd>
              {format.list(
                blocks.flatMap(({ name, firstTree }) =>
                  firstTree ? [text.coordinatesOf(name, inDegrees(firstTree))] : []
                )
              ) || help.noCoordinates}
            </dd>
          </div>
        </dl>
      </div>
    </section>
  )
}

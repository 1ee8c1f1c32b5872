'use client'

import { type Reason, type Verdict, verdictFor } from '@/lib/domain/safety/prune-today'
import { darkness } from '@/lib/events/dark'
import { darkBecause, exceptionBecause } from '@/lib/events/shapes'
import { darknessMatters, openShiftOf, useSelect } from '@/lib/hooks'
import { capitalised, speciesWords } from '@/lib/text/species'
import { useLeadWords } from '../crew/use-lead-words'
import { useFormat } from '../layout/use-format'
import { useWords } from '../layout/Words'
import { Note } from '../ui/Note'
import { ExceptionOf } from './ExceptionOf'
import type { Today } from './use-day'
import { useReasonWords } from './use-reason-words'
import { useSourceWords } from './use-source-words'
import './weather.css'

/** Go, not these, or stop: each species of the round, with every reason and who may make an exception. */
export function TodayVerdict({ day, species }: { day: Today; species: readonly string[] }) {
  const { weather: text } = useLeadWords()
  const words = useWords()
  const format = useFormat()
  const isOpen = useSelect((view) => openShiftOf(view) !== null)
  const verdicts = species.map((one) => verdictFor(one, day))
  const forAll = sharedReasons(verdicts)
  const codes = new Set(forAll.map(({ code }) => code))
  const ownReasons = ({ reasons }: Verdict) => reasons.filter(({ code }) => !codes.has(code))
  const wasOff = ({ lifted }: Verdict) => lifted.some(({ weight }) => weight === 'off')
  const justGo = verdicts.filter(
    (one) => one.says === 'go' && ownReasons(one).length === 0 && !wasOff(one)
  )
  const withWords = verdicts.filter((one) => !justGo.includes(one))
  const isStop = verdicts.some(({ says }) => says === 'stop')
  const darkensSoon = useSelect((view) => darknessMatters(view.ground, new Date(day.nowMs)))
  const isExcepted = day.exceptions[darkness] !== undefined

  return (
    <div className="stack">
      {isStop && <p className="verdict-stop">{text.stopAll}</p>}
      <Reasons reasons={forAll} day={day} species={species[0] ?? ''} />
      {isOpen && darkensSoon && (
        <ExceptionOf
          what={darkness}
          because={darkBecause}
          isOff={!isExcepted}
          isLifted={isExcepted}
        />
      )}
      <ul className="verdicts" aria-label={text.today}>
        {withWords.map((verdict) => {
          const own = ownReasons(verdict)
          const name = speciesWords(words, verdict.species).many
          const isLifted = wasOff(verdict)
          const isOff = own.some(({ weight }) => weight === 'off')
          return (
            <li key={verdict.species} className={`verdict is-${verdict.says}`}>
              <p className="verdict-head">
                <b>{capitalised(name)}</b>
                <span className="verdict-says">{text.says[verdict.says]}</span>
              </p>
              <Reasons reasons={own} day={day} species={verdict.species} />
              {(isOff || isLifted) && isOpen && (
                <ExceptionOf
                  what={verdict.species}
                  because={exceptionBecause}
                  isOff={isOff}
                  isLifted={isLifted}
                />
              )}
            </li>
          )
        })}
        {justGo.length > 0 && (
          // Nothing is to be said of these: one line, so that the others are seen.
          <li className="verdict is-go">
            <p className="verdict-head">
              <b>
                {capitalised(
                  format.list(justGo.map(({ species: one }) => speciesWords(words, one).many))
                )}
              </b>
              <span className="verdict-says">{text.says.go}</span>
            </p>
          </li>
        )}
      </ul>
      {verdicts.every(({ says, reasons }) => says === 'go' && reasons.length === 0) && (
        <p className="small">{text.allGo}</p>
      )}
    </div>
  )
}

type ReasonsProps = { reasons: readonly Reason[]; day: Today; species: string }

function Reasons({ reasons, day, species }: ReasonsProps) {
  const { weather: text } = useLeadWords()
  const wordsOf = useReasonWords(day)
  const sourceOf = useSourceWords()
  return reasons.map(({ code, weight, source, exception }) => (
    <Note
      key={code}
      tone={weight === 'stops' ? 'stop' : 'plain'}
      icon={weight === 'note' ? 'info' : 'warn'}
    >
      {wordsOf(code, species)}{' '}
      {weight !== 'note' && <b>{exception === 'lead' ? text.byLead : text.byNobody}</b>}
      <small className="verdict-source">{sourceOf(source)}</small>
    </Note>
  ))
}

/** What is said of every species is said once. */
function sharedReasons(verdicts: readonly Verdict[]): Reason[] {
  const [first, ...others] = verdicts
  if (!first) return []
  return first.reasons.filter(
    ({ code, weight }) =>
      weight !== 'off' &&
      others.every(({ reasons }) => reasons.some((reason) => reason.code === code))
  )
}

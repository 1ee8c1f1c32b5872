'use client'

import './planning.css'

import type { DayAhead } from '@/lib/domain/planning/day-ahead'
import { useLeadWords } from '../crew/use-lead-words'
import { useFormat } from '../layout/use-format'
import { More } from '../ui/More'
import { MinutesTable } from './MinutesTable'
import type { DayToCome } from './use-day-ahead'
import { WhatItRestsOn } from './WhatItRestsOn'

type Told = Extract<DayToCome, { state: 'told' }>

/** How far one gets by the end, and when all is done: a sentence each, and what they rest on. */
export function RestOfDay({ day }: { day: DayToCome }) {
  const { dayAhead: text } = useLeadWords()
  if (day.state === 'unknown') return null
  return (
    <section className="ahead" aria-label={text.title}>
      <h2>{text.title}</h2>
      {day.state === 'told' ? <Sentences day={day} /> : <p>{text[day.state]}</p>}
    </section>
  )
}

function Sentences({ day }: { day: Told }) {
  const { dayAhead: text } = useLeadWords()
  const format = useFormat()
  const { ahead } = day
  if (ahead.state === 'not_enough') return <p>{text.notEnough(ahead.trees, ahead.needed)}</p>
  if (ahead.left === 0) return <p>{text.noneLeft}</p>
  if (day.people === 0) return <p>{text.nobody}</p>
  return (
    <>
      <p className="ahead-answer">
        {text.more(ahead.all.trees.from, ahead.all.trees.to, format.clock(new Date(day.endsMs)))}
      </p>
      <AllDone ahead={ahead} nowMs={day.nowMs} />
      <p className="small">{text.often}</p>
      <More title={text.behind}>
        <WhatItRestsOn day={day} ahead={ahead} />
        <MinutesTable kinds={ahead.kinds} />
      </More>
    </>
  )
}

type AllDoneProps = { ahead: Extract<DayAhead, { state: 'known' }>; nowMs: number }

function AllDone({ ahead: { all, left }, nowMs }: AllDoneProps) {
  const { dayAhead: text } = useLeadWords()
  const format = useFormat()
  if (!all.moreDays || !all.allDone) return null
  const [from, to] = [Math.ceil(all.moreDays.from), Math.ceil(all.moreDays.to)]
  const clock = (minutes: number) => format.clock(new Date(nowMs + minutes * 60_000))
  const sentence =
    to === 0
      ? text.allToday(left, clock(all.allDone.from), clock(all.allDone.to))
      : from === 0
        ? text.maybeToday(left, to)
        : text.moreDays(left, from, to)
  return <p>{sentence}</p>
}

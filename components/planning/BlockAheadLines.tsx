'use client'

import type { BlockAhead } from '@/lib/domain/planning/day-ahead'
import { useLeadWords } from '../crew/use-lead-words'
import { useFormat } from '../layout/use-format'

type BlockAheadLinesProps = { ahead: BlockAhead; nowMs: number; endsMs: number }

/** How much work is left in a block, and when who is there now is through with it. */
export function BlockAheadLines({ ahead, nowMs, endsMs }: BlockAheadLinesProps) {
  const { dayAhead: text } = useLeadWords()
  const format = useFormat()
  const { hours, allDone, moreDays, left } = ahead
  if (left === 0) return null
  const clock = (minutes: number) => format.clock(new Date(nowMs + minutes * 60_000))
  const isToday = (minutes: number) => nowMs + minutes * 60_000 <= endsMs
  return (
    <p className="small">
      {text.hoursLeft(Math.max(1, Math.round(hours.from)), Math.max(1, Math.round(hours.to)))}{' '}
      {allDone &&
        (isToday(allDone.to)
          ? text.blockToday(clock(allDone.from), clock(allDone.to))
          : isToday(allDone.from)
            ? text.blockMaybe(clock(allDone.from))
            : moreDays && text.blockDays(Math.ceil(moreDays.from), Math.ceil(moreDays.to)))}
    </p>
  )
}

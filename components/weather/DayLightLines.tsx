'use client'

import { lightForLaddersMs } from '@/lib/domain/safety/prune-today'
import { useLeadWords } from '../crew/use-lead-words'
import { useFormat } from '../layout/use-format'
import { Facts } from '../ui/Facts'
import type { Today } from './use-day'

/** How long it stays light: for ladders, for the ground, and for the walk out. */
export function DayLightLines({ day }: { day: Today }) {
  const { weather: text } = useLeadWords()
  const format = useFormat()
  const clock = (ms: number) => format.clock(new Date(ms))
  return <Facts facts={lines().map((line) => ({ icon: 'sun' as const, text: line }))} />

  function lines(): string[] {
    if (day.light === null) return [text.noPlace]
    const { sun, civil } = day.light
    if (sun.state === 'up_all_day') return [text.upAllDay]
    if (sun.state === 'down_all_day') return [text.downAllDay]
    const { from, to } = sun.times
    if (day.nowMs < from || day.nowMs >= to) {
      return day.nowMs < from ? [text.sunDown(clock(from))] : [text.reasons.dark]
    }
    const laddersUntil = lightForLaddersMs(day) ?? to
    return [
      text.lightLeft(format.duration((to - day.nowMs) / 60_000), clock(to)),
      day.nowMs < laddersUntil
        ? text.laddersUntil(clock(laddersUntil))
        : text.reasons.ladders_light,
      ...(civil.state === 'rises' ? [text.civilUntil(clock(civil.times.to))] : []),
    ]
  }
}

'use client'

import { cupDueMs, isHighHeat, isHot, restDueMs } from '@/lib/domain/safety/heat-duties'
import { freshReading, stopsFor } from '@/lib/domain/safety/weather'
import { askedOf, laddersOffBecause, speciesOffs } from '@/lib/events/weather'
import { nowIn, openShiftOf, useNow, useSelect, type View } from '@/lib/hooks'
import { speciesWords } from '@/lib/text/species'
import { useFormat } from '../layout/use-format'
import { useWords } from '../layout/Words'
import { useRefusalWords } from '../sync/use-refusal-words'
import { Note } from '../ui/Note'

/** What is off now and why, and in heat when to drink and to rest. Nothing where there is nothing to say. */
export function ConditionsLine({ species }: { species?: string }) {
  const words = useWords()
  const text = words.conditions
  const format = useFormat()
  const sentenceOf = useRefusalWords()
  // Asked again each half minute: thunder is over, a rest is due.
  const now = useNow()
  const facts = useSelect(factsOf)
  if (facts === null || now === null) return null

  const { stops, offs, ladders, lifted, workedSince, temperatureC, startsAt } = facts
  const isStopped = stops.length > 0
  const isMineOff = !isStopped && offs.some(({ what }) => what === species)
  const names = offs.map(({ what, why }) => text.offBecause(nameOf(what), reasonOf(why)))
  const offList = [...names, ...(ladders ? [text.offBecause(text.ladders, reasonOf(ladders))] : [])]
  // While nobody works, the rest would only be noise.
  const ofTrees = [
    ...(isMineOff ? [text.mine] : []),
    ...(offList.length > 0 ? [text.off(format.list(offList))] : []),
    ...(lifted.length > 0 ? [text.excepted(format.list(lifted.map(nameOf)))] : []),
    ...(facts.isUnknown ? [text.unknown] : []),
  ]
  const sentences = [
    ...(isStopped ? stops.map((stop) => sentenceOf(stop)) : ofTrees),
    ...heatLines(),
  ]
  if (sentences.length === 0) return null
  const isGrave = isStopped || isMineOff
  return (
    <Note tone={isGrave ? 'stop' : 'plain'} icon={isGrave ? 'warn' : 'info'} role="status">
      {sentences.join(' ')}
    </Note>
  )

  function nameOf(what: string): string {
    return speciesWords(words, what).many
  }

  function reasonOf(why: string): string {
    return words.things.offReason[why as keyof typeof words.things.offReason] ?? why
  }

  function heatLines(): string[] {
    const nowMs = now?.getTime() ?? 0
    if (temperatureC === null || !isHot(temperatureC)) return []
    const clock = (ms: number) => format.clock(new Date(ms))
    const cup = text.cup(clock(cupDueMs(Date.parse(startsAt), nowMs)))
    if (workedSince === null || !isHighHeat(temperatureC)) return [cup]
    const dueMs = restDueMs(Date.parse(workedSince))
    return [dueMs <= nowMs ? text.restNow : text.restAt(clock(dueMs)), cup]
  }
}

function factsOf(view: View) {
  const { state, me } = view
  const shift = openShiftOf(view)
  if (!state || !shift) return null
  const asked = askedOf(state, nowIn(view))
  const species = state.rounds[shift.roundId]?.species ?? []
  const fresh = freshReading(asked)
  const there = state.attendance[me?.personId ?? '']
  return {
    stops: stopsFor(asked).map(({ code, until }) => ({ code, detail: { until } })),
    offs: species.flatMap((what) => {
      const [why] = speciesOffs(state, what, { asked, shift })
      return why === undefined ? [] : [{ what, why }]
    }),
    ladders: laddersOffBecause(asked, shift),
    lifted: Object.keys(state.exceptions).filter(
      (what) => speciesOffs(state, what, { asked, shift }).length === 0
    ),
    workedSince: there?.state === 'here' ? there.since : null,
    temperatureC: fresh?.temperatureC ?? null,
    startsAt: shift.startsAt,
    // Who never wrote any down does without.
    isUnknown: fresh === null && state.weather.latest !== null,
  }
}

'use client'

import { cupDueMs, isHighHeat, isHot, restDueMs } from '@/lib/domain/safety/heat-duties'
import { useFormat } from '../layout/use-format'
import { useWords } from '../layout/Words'
import { useRefusalWords } from '../sync/use-refusal-words'
import { Note } from '../ui/Note'
import { type Conditions, useConditions } from './use-conditions'
import { useLightLines } from './use-light-lines'
import { useOffWords } from './use-off-words'

/**
 * What somebody at a tree must know now: that nobody works, that their tree or the ladders are off, how long it stays
 * light, in heat when to drink and to rest. Of other kinds of trees it says nothing. Nothing where there is nothing to say.
 */
export function ConditionsLine({ species }: { species?: string }) {
  const { conditions: text } = useWords()
  const sentenceOf = useRefusalWords()
  const { offWords, exceptedWords } = useOffWords()
  const heatLines = useHeatLines()
  const conditions = useConditions()
  const light = useLightLines(conditions?.now ?? null)
  if (conditions === null) return null

  const { stops, offs, ladders, lifted, isUnknown } = conditions
  const isStopped = stops.length > 0
  const mine = offs.filter(({ what }) => what === species)
  const isMineOff = !isStopped && mine.length > 0
  // While nobody works, the rest would only be noise.
  const ofTrees = [
    ...(isMineOff ? [text.mine] : []),
    ...offWords([...mine, ...(ladders ? [{ what: 'ladders', why: ladders }] : [])]),
    ...exceptedWords(lifted.filter((what) => what === species)),
    ...(isUnknown ? [text.unknown] : []),
  ]
  const sentences = [
    ...(isStopped ? stops.map((stop) => sentenceOf(stop)) : ofTrees),
    ...light.lines,
    ...heatLines(conditions),
  ]
  if (sentences.length === 0) return null
  const isGrave = isStopped || isMineOff || light.call === 'off_ladder'
  return (
    <Note tone={isGrave ? 'stop' : 'plain'} icon={isGrave ? 'warn' : 'info'} role="status">
      {sentences.join(' ')}
    </Note>
  )
}

/** Which kinds of trees are off now, for whoever looks for one. Below what there is to do: none of them is offered. */
export function KindsOff() {
  const { offWords, exceptedWords } = useOffWords()
  const conditions = useConditions()
  if (conditions === null || conditions.stops.length > 0) return null
  const sentences = [...offWords(conditions.offs), ...exceptedWords(conditions.lifted)]
  return sentences.length > 0 ? <Note icon="info">{sentences.join(' ')}</Note> : null
}

function useHeatLines() {
  const { conditions: text } = useWords()
  const format = useFormat()
  return ({ now, temperatureC, workedSince, startsAt }: Conditions): string[] => {
    if (temperatureC === null || !isHot(temperatureC)) return []
    const clock = (ms: number) => format.clock(new Date(ms))
    const cup = text.cup(clock(cupDueMs(Date.parse(startsAt), now.getTime())))
    if (workedSince === null || !isHighHeat(temperatureC)) return [cup]
    const dueMs = restDueMs(Date.parse(workedSince))
    return [dueMs <= now.getTime() ? text.restNow : text.restAt(clock(dueMs)), cup]
  }
}

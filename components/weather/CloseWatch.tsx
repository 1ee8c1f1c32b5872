'use client'

import { useLeadWords } from '../crew/use-lead-words'
import { useFormat } from '../layout/use-format'
import { useNameOf } from '../sync/use-refusal-words'
import { CloseWatchLines } from './CloseWatchLines'
import { useCloseWatch } from './use-close-watch'

/** Beside water and rests: on a warm day who is new, by name, and everybody in a heat wave. */
export function CloseWatch({ today }: { today: string }) {
  const { closeWatch: text } = useLeadWords()
  const format = useFormat()
  const nameOf = useNameOf()
  const watch = useCloseWatch(today)
  return watch && <CloseWatchLines watch={watch} text={text} format={format} nameOf={nameOf} />
}

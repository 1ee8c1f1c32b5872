'use client'

import type { Call } from '@/lib/events/state'
import { useWords } from '../layout/Words'
import { useNameOf } from '../sync/use-refusal-words'

/** "Ann has a question", as a lead reads it. */
export function useCallTitle(): (call: Pick<Call, 'kind' | 'calledBy' | 'subject'>) => string {
  const { of, banner } = useWords().call
  const nameOf = useNameOf()
  return ({ kind, calledBy, subject }) =>
    of[kind](nameOf(calledBy), subject === null ? banner.somebody : nameOf(subject))
}

'use client'

import { useNameOf } from '../sync/use-refusal-words'
import { useLeadWords } from './use-lead-words'

/** "Fenna", "Fenna and Oskar": first names, as one says them over the trees. */
export function usePairName(): (people: readonly string[]) => string {
  const nameOf = useNameOf()
  const { leadMap } = useLeadWords()
  return ([one, other]) => {
    if (one === undefined) return ''
    return other === undefined
      ? firstName(nameOf(one))
      : leadMap.and(firstName(nameOf(one)), firstName(nameOf(other)))
  }
}

export function firstName(name: string): string {
  return name.split(/\s+/)[0] ?? name
}

'use client'

import { stillInTheDark, useNow, useSelect } from '@/lib/hooks'
import { useLeadWords } from '../crew/use-lead-words'
import { Banner } from '../layout/Banner'
import { useFormat } from '../layout/use-format'
import { useNameOf, useTagOf } from '../sync/use-refusal-words'

/** The sun is down and people are still at trees: a lead calls them in. */
export function InTheDarkBanner() {
  const { weather: text } = useLeadWords()
  const now = useNow()
  const still = useSelect((view) => (now ? stillInTheDark(view, now) : []))
  const nameOf = useNameOf()
  const tagOf = useTagOf()
  const format = useFormat()
  if (still.length === 0) return null
  const people = still.map(({ personId, tree }) =>
    tree === null ? nameOf(personId) : `${nameOf(personId)} (${tagOf(tree)})`
  )
  return (
    <Banner tone="stop" icon="warn">
      {text.stillInTheDark(format.list(people))}
    </Banner>
  )
}

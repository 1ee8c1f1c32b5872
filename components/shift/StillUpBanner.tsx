'use client'

import { useSelect } from '@/lib/hooks'
import { routes } from '@/lib/routes'
import { useLeadWords } from '../crew/use-lead-words'
import { Banner } from '../layout/Banner'
import { useFormat } from '../layout/use-format'
import { useNameOf, useTagOf } from '../sync/use-refusal-words'
import { ButtonLink } from '../ui/ButtonLink'
import { stillUp } from './briefed'

/** After "come down now": who is at a tree and has not signed. The phone is not the alarm. */
export function StillUpBanner() {
  const { leadMap } = useLeadWords()
  const up = useSelect(stillUp)
  const nameOf = useNameOf()
  const tagOf = useTagOf()
  const format = useFormat()
  if (up.length === 0) return null
  const people = up.map(({ id, tree }) => (tree ? `${nameOf(id)} (${tagOf(tree)})` : nameOf(id)))
  return (
    <Banner
      tone="call"
      icon="warn"
      action={<ButtonLink href={routes.giveBriefing()}>{leadMap.toTheBriefing}</ButtonLink>}
    >
      {leadMap.stillUp(format.list(people))}
    </Banner>
  )
}

'use client'

import { darkness } from '@/lib/events/dark'
import { darknessMatters, nameOf, useNow, useSelect } from '@/lib/hooks'
import { routes } from '@/lib/routes'
import { useLeadWords } from '../crew/use-lead-words'
import { useFormat } from '../layout/use-format'
import { useWords } from '../layout/Words'
import { ButtonLink } from '../ui/ButtonLink'
import { Note } from '../ui/Note'
import { useExceptedName } from './use-excepted-name'

/** Which species are pruned although they are off, and who let them be: a manager may be elsewhere. */
export function ExceptionsToday() {
  const { weather: text } = useLeadWords()
  const words = useWords()
  const format = useFormat()
  const excepted = useExceptedName()
  const now = useNow()
  const made = useSelect((view) =>
    Object.entries(view.state?.exceptions ?? {})
      // By day it changes nothing.
      .filter(([what]) => what !== darkness || (now !== null && darknessMatters(view.ground, now)))
      .map(([what, { because, madeBy }]) => ({ what, because, by: nameOf(view, madeBy) }))
  )
  if (made.length === 0) return null
  const list = made.map(({ what, because, by }) => {
    const why = text.because[because as keyof typeof text.because] ?? because
    const who = by ?? words.claim.somebody
    return `${excepted(what)} (${who}: ${why})`
  })
  return (
    <Note tone="call" icon="edit" role="status">
      {text.exceptionsToday(format.list(list))}{' '}
      <ButtonLink href={routes.weather()}>{text.link}</ButtonLink>
    </Note>
  )
}

'use client'

import { stillToLeave, useSelect, useSend } from '@/lib/hooks'
import { useLeadWords } from '../crew/use-lead-words'
import { Banner } from '../layout/Banner'
import { useFormat } from '../layout/use-format'
import { useNameOf, useTagOf } from '../sync/use-refusal-words'
import { Button } from '../ui/Button'

/** Who was told to come out of a tree and has not said so: a lead looks for them, and says it for whom they saw. */
export function StillInBanner() {
  const { weather: text } = useLeadWords()
  const still = useSelect(stillToLeave)
  const nameOf = useNameOf()
  const tagOf = useTagOf()
  const format = useFormat()
  const send = useSend()
  const [first] = still
  if (!first) return null
  const people = still.map(({ personId, tree }) =>
    tree === null ? nameOf(personId) : `${nameOf(personId)} (${tagOf(tree)})`
  )
  return (
    <Banner
      tone="stop"
      icon="warn"
      action={
        <Button onPress={() => void send('answer_weather', {}, { personId: first.personId })}>
          {text.seenOut(nameOf(first.personId))}
        </Button>
      }
    >
      {text.stillIn(format.list(people))}
    </Banner>
  )
}

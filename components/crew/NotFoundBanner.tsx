'use client'

import { useSelect, useSend } from '@/lib/hooks'
import { Banner } from '../layout/Banner'
import { useNameOf } from '../sync/use-refusal-words'
import { Button } from '../ui/Button'
import { useLeadWords } from './use-lead-words'

const nobody: Record<string, string> = {}

/** Who was not found when a shift closed: over every screen of every lead until they are. */
export function NotFoundBanner() {
  const { count: text } = useLeadWords()
  const nameOf = useNameOf()
  const send = useSend()
  const notFound = useSelect((view) => view.state?.notFound ?? nobody)
  return Object.keys(notFound).map((id) => (
    <Banner
      key={id}
      tone="stop"
      icon="person"
      action={
        <Button
          label={text.isFoundPerson(nameOf(id))}
          onPress={() => void send('found_person', { subject: id })}
        >
          {text.isFound}
        </Button>
      }
    >
      <b>{text.notFound(nameOf(id))}</b> {text.notFoundNote}
    </Banner>
  ))
}

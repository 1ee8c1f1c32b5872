'use client'

import { Suspense } from 'react'

import type { Sent } from '@/lib/hooks'
import { faultSentence } from '@/lib/text/fault'
import { useDoorWords } from '../layout/Words'
import { Why } from '../ui/Why'
import { useRefusalWords } from './use-refusal-words'

type WhyNotProps = {
  /** What became of what was asked for; null while nothing was. */
  sent: Sent | null
  id?: string | undefined
}

/** Why something did not happen, above the button that asked for it. Silent when it did. */
export function WhyNot({ sent, id }: WhyNotProps) {
  if (sent === null || sent.state === 'kept' || sent.state === 'accepted') return null
  // Sentences for refusals come with the words of the day, which a first screen has not fetched.
  return (
    <Suspense fallback={null}>
      <Why tone="wrong" id={id}>
        {sent.state === 'refused' ? <Refusals sent={sent} /> : <Fault sent={sent} />}
      </Why>
    </Suspense>
  )
}

function Refusals({ sent }: { sent: Extract<Sent, { state: 'refused' }> }) {
  const say = useRefusalWords()
  return sent.refused.map((refusal) => say(refusal)).join(' ')
}

function Fault({ sent }: { sent: Extract<Sent, { state: 'no_answer' | 'failed' }> }) {
  const words = useDoorWords()
  if (sent.state === 'no_answer') return words.errors.noAnswer
  const { fault, code } = sent
  return faultSentence(words, { fault, ...(code !== null && { code }) })
}

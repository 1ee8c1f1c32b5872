'use client'

import type { Sent } from '@/lib/hooks'
import { useLeadWords } from '../layout/Words'
import { WhyNot } from '../sync/WhyNot'
import { Why } from '../ui/Why'

const codeRefusals = ['code_wrong', 'code_expired', 'code_used'] as const

/** A set-up code has its own ways on: there is no lead to ask yet. */
export function WhyNotMade({ sent }: { sent: Sent | null }) {
  const { setUp } = useLeadWords()
  const refused = sent?.state === 'refused' ? sent.refused : []
  const about = codeRefusals.find((code) => refused.some((refusal) => refusal.code === code))
  return about ? <Why tone="wrong">{setUp[about]}</Why> : <WhyNot sent={sent} />
}

'use client'

import { useState } from 'react'

import { useDraft } from '@/lib/hooks'
import { FlagForm } from './FlagForm'
import { Flagged } from './Flagged'
import { emptyFlag, limbFlag } from './flag-draft'
import { NoSuchTree } from './NoSuchTree'
import { useTree } from './use-tree'

/** Saying what is wrong with a tree, and then what to do. */
export function FlagScreen({ no, isAboutLimb }: { no: number | null; isAboutLimb: boolean }) {
  const facts = useTree(no)
  const draft = useDraft(`flag-${no}`, isAboutLimb ? limbFlag : emptyFlag)
  const [raised, setRaised] = useState<{ id: string; kind: 'disease' | 'arborist' } | null>(null)
  if (!facts) return <NoSuchTree />
  if (raised) return <Flagged facts={facts} flag={raised.id} kind={raised.kind} />
  return <FlagForm facts={facts} draft={draft} onRaised={(id, kind) => setRaised({ id, kind })} />
}

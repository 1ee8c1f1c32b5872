'use client'

import { nameOf, useSelect } from '@/lib/hooks'
import { useLeadWords } from '../layout/Words'

/** Names of people of the past come with what was read; who has none there was forgotten. */
export function useNamesWith(names: Readonly<Record<string, string>>): (id: string) => string {
  const { audit } = useLeadWords()
  const known = useSelect((view) => view.names)
  const unsent = useSelect((view) => view.unsent)
  return (id) => names[id] ?? nameOf({ names: known, unsent }, id) ?? audit.forgotten
}

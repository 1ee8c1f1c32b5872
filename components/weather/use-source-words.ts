'use client'

import type { Source } from '@/lib/domain/safety/source'
import { useWords } from '../layout/Words'

/** Where a rule comes from, and that local rules win. */
export function useSourceWords(): (source: Source) => string {
  const says = useWords().things.source
  return (source) => (source.kind === 'published' ? says.published(source.name) : says[source.kind])
}

'use client'

import { useMemo } from 'react'

import { useSelect } from '@/lib/hooks'
import { type Format, formatFor } from '@/lib/text/format'
import { useLanguage } from './Words'

/** Numbers, units and times as this reader and this orchard write them. */
export function useFormat(): Format {
  const language = useLanguage()
  const units = useSelect((view) => view.state?.orchard.units ?? 'metric')
  const timeZone = useSelect((view) => view.state?.orchard.timeZone ?? 'UTC')
  return useMemo(() => formatFor({ language, units, timeZone }), [language, units, timeZone])
}

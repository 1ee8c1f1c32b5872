'use client'

import type { Flag } from '@/lib/events/state'
import { useWords } from '../layout/Words'

/** What was seen and how bad it is. A sign of another version of the app is said as it is written. */
export function useFlagWords(): (flag: Flag) => { sign: string; severity: string } {
  const { flag: text, things } = useWords()
  return ({ kind, sign, severity }) => {
    const signs: Record<string, string> = kind === 'disease' ? text.disease : text.hazard
    return {
      sign: Object.hasOwn(signs, sign) ? (signs[sign] ?? sign) : sign,
      severity: things.severity[severity],
    }
  }
}

'use client'

import { hoursCsv } from '@/lib/domain/orchard/export-records'
import type { VolunteerHours } from '@/lib/hooks'
import { useLeadWords } from '../layout/Words'
import { saveFile } from '../shift/save-file'

/** Hands hours to the browser as a table; gives the name of the file. `of`: a season, or the day of today. */
export function useHoursFile() {
  const { takeOut: text, shift } = useLeadWords()
  const kindOf = (kind: string) => shift.kinds[kind as keyof typeof shift.kinds] ?? kind
  return ({ names, shifts }: Pick<VolunteerHours, 'names' | 'shifts'>, of: string): string => {
    const name = `${text.files.hours}-${of}.csv`
    const nameOf = (person: string) => names[person] ?? null
    saveFile(name, hoursCsv(shifts, { heads: text.hoursHeads, kindOf, nameOf }))
    return name
  }
}

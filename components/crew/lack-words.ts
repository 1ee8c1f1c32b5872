/** What somebody lacks, each in a word or two. */

import type { LeadMessages } from '@/lib/text/messages'

export function lackWords(
  { missingWords }: Pick<LeadMessages['people'], 'missingWords'>,
  codes: readonly string[]
): string[] {
  return codes.map((code) =>
    // A code of a newer server is better than silence about something that is missing.
    Object.hasOwn(missingWords, code) ? missingWords[code as keyof typeof missingWords] : code
  )
}

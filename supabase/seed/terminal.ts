/** What the scripts of this folder share at a terminal: the language, and where the answers go. */

import type { Language } from '@/lib/text/language'

export type Print = (line: string) => void

/** What was asked for, else what the terminal speaks, else English. */
export function terminalLanguage(
  asked: string | undefined,
  environment: Readonly<Record<string, string | undefined>> = process.env
): Language {
  const { LC_ALL, LC_MESSAGES, LANG } = environment
  const wish = asked || LC_ALL || LC_MESSAGES || LANG || ''
  return wish.toLowerCase().startsWith('es') ? 'es' : 'en'
}

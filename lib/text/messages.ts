/**
 * The messages of one language, fetched when they are asked for: a phone loads one language, and a
 * volunteer's phone never loads what only leads and managers read. The promises are kept, so that
 * `use(messages(language))` gets the same one each time.
 */

import type { crew } from './en/crew'
import type { lead } from './en/lead'
import type { Language } from './language'

/** What everybody on a shift may read. */
export type Messages = typeof crew
/** What only leads and managers read. */
export type LeadMessages = typeof lead

const crewFiles = { en: () => import('./en/crew'), es: () => import('./es/crew') }
const leadFiles = { en: () => import('./en/lead'), es: () => import('./es/lead') }

const crewMessages = new Map<Language, Promise<Messages>>()
const leadsMessages = new Map<Language, Promise<LeadMessages>>()

export function messages(language: Language): Promise<Messages> {
  return keptIn(crewMessages, language, () => crewFiles[language]().then((file) => file.crew))
}

export function leadMessages(language: Language): Promise<LeadMessages> {
  return keptIn(leadsMessages, language, () => leadFiles[language]().then((file) => file.lead))
}

/** A file that did not come (no signal) is asked for again the next time. */
function keptIn<Found>(
  kept: Map<Language, Promise<Found>>,
  language: Language,
  fetchFile: () => Promise<Found>
): Promise<Found> {
  const known = kept.get(language)
  if (known !== undefined) return known
  const coming = fetchFile()
  kept.set(language, coming)
  coming.catch(() => kept.delete(language))
  return coming
}

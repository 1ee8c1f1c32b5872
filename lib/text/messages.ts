/**
 * The messages of one language, fetched when they are asked for: a phone loads one language, the first
 * screens load only their own part, and a volunteer's phone never loads what only leads and managers
 * read. The promises are kept, so that `use(messages(language))` gets the same one each time.
 */

import type { crew } from './en/crew'
import type { door } from './en/door'
import type { lead } from './en/lead'
import type { start } from './en/start'
import type { Language } from './language'

/** What is read before one is in. */
export type DoorMessages = typeof door
/** What is read before the first tree; the above is a part of it. */
export type StartMessages = DoorMessages & typeof start
/** What everybody on a shift may read; the above is a part of it. */
export type Messages = typeof crew
/** What only leads and managers read. */
export type LeadMessages = typeof lead

const doorFiles = { en: () => import('./en/door'), es: () => import('./es/door') }
const startFiles = { en: () => import('./en/start'), es: () => import('./es/start') }
const workFiles = { en: () => import('./en/work'), es: () => import('./es/work') }
const leadFiles = { en: () => import('./en/lead'), es: () => import('./es/lead') }

export const doorMessages = keptByLanguage(
  async (language): Promise<DoorMessages> => (await doorFiles[language]()).door
)

export const startMessages = keptByLanguage(async (language): Promise<StartMessages> => {
  const [door, { start }] = await Promise.all([doorMessages(language), startFiles[language]()])
  return { ...door, ...start }
})

export const messages = keptByLanguage(async (language): Promise<Messages> => {
  const [start, { work }] = await Promise.all([startMessages(language), workFiles[language]()])
  return { ...start, ...work }
})

export const leadMessages = keptByLanguage(
  async (language): Promise<LeadMessages> => (await leadFiles[language]()).lead
)

/** Fetches once; what did not come (no signal) is asked for again the next time. */
function keptByLanguage<Found>(fetchFile: (language: Language) => Promise<Found>) {
  const kept = new Map<Language, Promise<Found>>()
  return (language: Language): Promise<Found> => {
    const known = kept.get(language)
    if (known !== undefined) return known
    const coming = fetchFile(language)
    kept.set(language, coming)
    coming.catch(() => kept.delete(language))
    return coming
  }
}

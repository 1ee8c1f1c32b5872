/** The language in which the server writes this answer. */

import { cookies, headers } from 'next/headers'

import { type Language, languageCookie, languageFor } from '@/lib/text/language'

export async function requestLanguage(): Promise<Language> {
  const chosen = (await cookies()).get(languageCookie)?.value
  return languageFor(chosen, (await headers()).get('accept-language'))
}

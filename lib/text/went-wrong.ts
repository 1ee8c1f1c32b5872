/** Messages for broken screens, in both languages at once: they must not wait for a file to come. */

import { wentWrong as en } from './en/went-wrong'
import { wentWrong as es } from './es/went-wrong'
import type { Language } from './language'

export function wentWrongIn(language: Language): typeof en {
  return { en, es }[language]
}

/** The languages Rowcall speaks, and which of them somebody gets. */

export type Language = 'en' | 'es'

export const languages: readonly Language[] = ['en', 'es']

export const languageCookie = 'rowcall-language'

/** What was chosen on this device, else the first language of the browser that we speak, else English. */
export function languageFor(chosen: string | undefined, acceptLanguage: string | null): Language {
  if (isLanguage(chosen)) return chosen
  return wishesIn(acceptLanguage ?? '').find(isLanguage) ?? 'en'
}

export function isLanguage(text: string | undefined): text is Language {
  return languages.some((language) => language === text)
}

/** The main tags of an Accept-Language header, most wanted first. */
function wishesIn(header: string): string[] {
  return header
    .split(',')
    .map((part) => {
      const [tag = '', ...parameters] = part.trim().split(';')
      const weight = parameters
        .map((parameter) => /^\s*q=([\d.]+)/.exec(parameter)?.[1])
        .find(Boolean)
      return { main: tag.toLowerCase().split('-')[0] ?? '', weight: Number(weight ?? 1) }
    })
    .filter(({ weight }) => weight > 0)
    .sort((a, b) => b.weight - a.weight)
    .map(({ main }) => main)
}

/** What a person chose for this device: language in a cookie, so that the server writes it; theme here. */

import { type Language, languageCookie } from '@/lib/text/language'

/** `device` follows what the system says. */
export type Theme = 'device' | 'light' | 'dark'

const themeKey = 'rowcall-theme'
const yearInSeconds = 365 * 24 * 3600

/** The server writes the next page in it: refresh the router after. */
export function chooseLanguage(language: Language): void {
  // biome-ignore lint/suspicious/noDocumentCookie: the Cookie Store is missing on many phones
  document.cookie = `${languageCookie}=${language}; path=/; max-age=${yearInSeconds}; samesite=lax`
}

export function chooseTheme(theme: Theme): void {
  if (theme === 'device') localStorage.removeItem(themeKey)
  else localStorage.setItem(themeKey, theme)
  document.documentElement.dataset.theme = theme === 'device' ? systemTheme() : theme
}

export function chosenTheme(): Theme {
  const chosen = localStorage.getItem(themeKey)
  return chosen === 'light' || chosen === 'dark' ? chosen : 'device'
}

function systemTheme(): 'light' | 'dark' {
  return matchMedia('(prefers-color-scheme: dark)').matches ? 'dark' : 'light'
}

/**
 * Runs in the head, before anything is painted, and again when the system changes by itself.
 * Storage can be forbidden; then the system decides.
 */
export const themeScript = `(function () {
  var dusk = matchMedia('(prefers-color-scheme: dark)')
  function show() {
    var chosen = null
    try { chosen = localStorage.getItem('${themeKey}') } catch (forbidden) {}
    document.documentElement.dataset.theme =
      chosen === 'light' || chosen === 'dark' ? chosen : dusk.matches ? 'dark' : 'light'
  }
  show()
  if (dusk.addEventListener) dusk.addEventListener('change', show)
})()`

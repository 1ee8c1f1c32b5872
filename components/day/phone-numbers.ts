/** Telephone numbers in what somebody wrote on the emergency card. */

/** "Maren +34 600 11 22 33", "911", "(208) 555-0100": three digits or more, with what stands between them. */
const written = /(?:\+|\()?\d(?:[\d\s().\-/]*\d)?/g

/** As they are written; one that is too short to be called is a house or a gate. */
export function phoneNumbersIn(text: string): string[] {
  return (text.match(written) ?? []).filter((number) => number.replace(/\D/g, '').length >= 3)
}

/** What a phone dials. */
export function telHref(number: string): string {
  return `tel:${number.replace(/[^\d+]/g, '')}`
}

/** Which day it is somewhere. */

/** Making one is slow, and it is asked for each tree. */
const formats = new Map<string, Intl.DateTimeFormat>()

/** YYYY-MM-DD on the clocks of this time zone. */
export function dayIn(timeZone: string, at: Date): string {
  const format = formats.get(timeZone) ?? makeFormat(timeZone)
  formats.set(timeZone, format)
  const parts = format.formatToParts(at)
  const part = (wanted: string) => parts.find(({ type }) => type === wanted)?.value ?? ''
  return `${part('year')}-${part('month')}-${part('day')}`
}

function makeFormat(timeZone: string): Intl.DateTimeFormat {
  return new Intl.DateTimeFormat('en-US', {
    timeZone,
    year: 'numeric',
    month: '2-digit',
    day: '2-digit',
  })
}

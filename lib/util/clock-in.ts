/** Days and times on the clock of a time zone, as the forms of a browser write them. */

/** When the clock there shows this day and time. Null: not a day, or not a time. */
export function instantAt(day: string, time: string, timeZone: string): string | null {
  const wanted = Date.parse(`${day}T${time}:00Z`)
  if (Number.isNaN(wanted)) return null
  // The offset there may be another one on the two sides of a change of the clocks, so it is asked twice.
  const near = wanted - offsetMs(wanted, timeZone)
  return new Date(wanted - offsetMs(near, timeZone)).toISOString()
}

/** What the clock there shows then, as a form writes it. */
export function clockIn(timeZone: string, at: string): string {
  const { hour, minute } = partsIn(timeZone, new Date(at))
  return `${hour}:${minute}`
}

/** How far that clock is ahead of UTC. */
function offsetMs(at: number, timeZone: string): number {
  const { year, month, day, hour, minute, second } = partsIn(timeZone, new Date(at))
  const shown = Date.parse(`${year}-${month}-${day}T${hour}:${minute}:${second}Z`)
  return shown - Math.floor(at / 1000) * 1000
}

type Parts = Record<'year' | 'month' | 'day' | 'hour' | 'minute' | 'second', string>

function partsIn(timeZone: string, at: Date): Parts {
  const format = new Intl.DateTimeFormat('en-US', {
    timeZone,
    hourCycle: 'h23',
    year: 'numeric',
    month: '2-digit',
    day: '2-digit',
    hour: '2-digit',
    minute: '2-digit',
    second: '2-digit',
  })
  // The options above ask for exactly these.
  return Object.fromEntries(
    format.formatToParts(at).map(({ type, value }) => [type, value])
  ) as Parts
}

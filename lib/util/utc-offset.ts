/** Hours that a time zone is ahead of UTC at a moment; half hours where it has them. */
export function utcOffsetHours(timeZone: string, at: Date): number {
  const parts = new Intl.DateTimeFormat('en-US', {
    timeZone,
    timeZoneName: 'longOffset',
  }).formatToParts(at)
  const offset = parts.find(({ type }) => type === 'timeZoneName')?.value ?? ''
  const [, sign, hours, minutes] = /([+-])(\d+):(\d+)/.exec(offset) ?? []
  const size = Number(hours ?? 0) + Number(minutes ?? 0) / 60
  return sign === '-' ? -size : size
}

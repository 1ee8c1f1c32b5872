/** Until when something can be taken back; null once it is too late. */
export function undoUntil(at: string, minutes: number, now: Date): Date | null {
  const until = new Date(Date.parse(at) + minutes * 60_000)
  return now < until ? until : null
}

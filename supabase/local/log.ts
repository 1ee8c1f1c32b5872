/** What happened, one JSON object a line. Never a token, a body, a query string or an address. */

export type LogLevel = 'info' | 'warn' | 'error'
export type Log = (level: LogLevel, event: string, facts?: Record<string, LogFact>) => void
type LogFact = string | number | boolean | null | undefined

/** On a terminal only what needs somebody's attention, so that the addresses stay in sight. */
export function makeLog(out: NodeJS.WriteStream = process.stdout): Log {
  const wanted = process.env.ROWCALL_LOG ?? (out.isTTY ? 'warn' : 'info')
  const order: readonly string[] = ['info', 'warn', 'error']
  return (level, event, facts = {}) => {
    if (order.indexOf(level) < order.indexOf(wanted)) return
    out.write(`${JSON.stringify({ at: new Date().toISOString(), level, event, ...facts })}\n`)
  }
}

export function messageOf(error: unknown): string {
  return error instanceof Error ? error.message : String(error)
}

/** What the host needs from a database, whichever it is. Everything runs as the owner of the schema. */

export type Row = Record<string, unknown>
export type Value = string | number | boolean | null

export type Query = <T extends Row = Row>(sql: string, values?: readonly Value[]) => Promise<T[]>

export interface Engine {
  readonly name: 'PGlite' | 'PostgreSQL'
  /** One statement, in a transaction of its own. */
  query: Query
  /** Several statements without parameters: all of them happen or none. */
  script(sql: string): Promise<void>
  /**
   * Many statements on one view of the data. On PGlite everybody else waits meanwhile, so it is for
   * backup and restore, never for a call.
   */
  transaction<T>(kind: 'read only' | 'read write', work: (query: Query) => Promise<T>): Promise<T>
  /** `onGap` is called when notifications may have been lost. */
  listen(channel: string, onPayload: (payload: string) => void, onGap: () => void): Promise<void>
  /** Housekeeping that cannot run in a transaction. */
  vacuum(): Promise<void>
  close(): Promise<void>
}

/** How a transaction begins: a reading one sees the data as they are at its first statement. */
export function beginOf(kind: 'read only' | 'read write'): string {
  return kind === 'read only' ? 'begin isolation level repeatable read read only' : 'begin'
}

/** The owner of everything that migrations make; never a superuser. */
export const owner = 'rowcall_owner'

/** An error the database raised on purpose or by rule, with its five-character code. */
export class SqlError extends Error {
  constructor(
    readonly code: string,
    message: string,
    readonly detail: string | null,
    readonly hint: string | null
  ) {
    super(message)
    this.name = 'SqlError'
  }
}

/** The same error whichever driver threw it; what has no SQLSTATE is passed through. */
export function asSqlError(error: unknown): unknown {
  if (!(error instanceof Error)) return error
  const { code, detail, hint } = error as { code?: unknown; detail?: unknown; hint?: unknown }
  // Every SQLSTATE has a digit; EPIPE is not one.
  if (typeof code !== 'string' || !/^(?=.*\d)[0-9A-Z]{5}$/.test(code)) return error
  return new SqlError(code, error.message, textOrNull(detail), textOrNull(hint))
}

function textOrNull(value: unknown): string | null {
  return typeof value === 'string' ? value : null
}

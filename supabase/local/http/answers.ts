/** What a request is answered with, before it becomes bytes. */

export type Answer = {
  status: number
  /** Undefined: no body. A string is JSON already. */
  body?: unknown
  headers?: Record<string, string>
}

export type CallError = {
  code: string
  message: string
  details: string | null
  hint: string | null
}

export function callError(
  status: number,
  code: string,
  message: string,
  more: { details?: string | null; hint?: string | null } = {}
): Answer {
  const { details = null, hint = null } = more
  return { status, body: { code, message, details, hint } satisfies CallError }
}

/** The shape the auth client reads: `code` and `error_code` are the same word. */
export function authError(status: number, code: string, message: string): Answer {
  return { status, body: { code, error_code: code, message } }
}

export function busy(): Answer {
  return {
    ...authError(503, 'busy', 'Too many requests at once. Try again in a moment.'),
    headers: { 'retry-after': '1' },
  }
}

/** The HTTP status of a database error, as PostgREST assigns it. */
import { SqlError } from '../engine/engine'
import { type Answer, callError } from './answers'

export function answerOfError(error: unknown, role: string): Answer {
  if (!(error instanceof SqlError)) {
    return callError(503, 'unavailable', 'The database does not answer. Try again in a moment.')
  }
  const { code, message, detail, hint } = error
  return callError(statusOf(code, role), code, message, { details: detail, hint })
}

const byCode: Record<string, number> = {
  '23503': 409,
  '23505': 409,
  '25006': 405,
  '42883': 404,
  '42P01': 404,
  P0001: 400,
}

const byClass: Record<string, number> = {
  '08': 503,
  '0L': 403,
  '0P': 403,
  '22': 400,
  '23': 400,
  '25': 500,
  '28': 403,
  '40': 500,
  '53': 503,
  '54': 500,
  '55': 500,
  '57': 500,
  '58': 500,
  XX: 500,
}

export function statusOf(code: string, role: string): number {
  if (/^PT[2-5]\d\d$/.test(code)) return Number(code.slice(2))
  if (code === '42501') return role === 'anon' ? 401 : 403
  return byCode[code] ?? byClass[code.slice(0, 2)] ?? 400
}

/** What came instead of an answer, as one of a few codes. Sentences for people are in lib/text. */

import type { Fault, FaultCode } from '@/lib/events/answer'

/** What the client library gives: the HTTP status, and the error body if there was one. */
export type Failure = {
  status: number
  code?: string | undefined
  details?: string | null | undefined
}

const byStatus: Record<number, FaultCode> = {
  400: 'malformed',
  401: 'signed_out',
  403: 'not_allowed',
  404: 'malformed',
  409: 'malformed',
  413: 'too_large',
  429: 'busy',
  502: 'busy',
  503: 'busy',
  504: 'busy',
  // A network that wants somebody to agree to something first.
  511: 'offline',
}

export function faultOf({ status, code, details }: Failure): Fault {
  // An error with a good status is a page of somebody else's: a network that wants a login.
  const isNoAnswer = status === 0 || (status >= 200 && status < 300)
  // Our own codes are in the detail; the library's are only good for the log.
  const isOurs = isOwnCode(details)
  const isKnown = isOurs || !onlyOurs.includes(status)
  const fault = isNoAnswer ? 'offline' : (isKnown && byStatus[status]) || 'unknown'
  return { fault, code: isOurs ? details : code }
}

/** Without a code of ours a proxy or an update under way said so: nobody is put out, no work put aside. */
const onlyOurs = [403, 404, 409]

function isOwnCode(details: string | null | undefined): details is string {
  return typeof details === 'string' && /^[a-z_]{1,60}$/.test(details)
}

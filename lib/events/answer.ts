/** What the referee says to a command: the number of its event, or everything that forbids it. */

export type Refusal = { code: string; detail?: Record<string, unknown> | undefined }

export type NextTreeAnswer = { tree: number; why: 'dealt' | 'same_row' | 'nearest' }

export type Accepted = {
  n: number
  next?: NextTreeAnswer | undefined
  orchard?: string | undefined
  person?: string | undefined
  shift?: string | undefined
  tool?: number | undefined
  /** Work that came in too late to count as one's own. */
  kept?: 'also_worked' | 'late' | undefined
  /** What the person lacked who did the work that a lead entered from paper: codes. */
  missing?: string[] | undefined
}
export type Refused = { refused: Refusal[]; next?: NextTreeAnswer | undefined }
export type Answer = Accepted | Refused

/** As what late work was kept; null for everything else. */
export function keptAs(answer: Answer | null): 'also_worked' | 'late' | null {
  return answer === null || isRefused(answer) ? null : (answer.kept ?? null)
}

export function isRefused(answer: Answer): answer is Refused {
  return 'refused' in answer
}

export const faultCodes = [
  'offline',
  'busy',
  'signed_out',
  'not_allowed',
  'malformed',
  'too_large',
  'unknown',
] as const
/** What came instead of an answer. Only `offline`, `busy` and `unknown` are worth another try. */
export type FaultCode = (typeof faultCodes)[number]

/** `code` is the server's own, where it has one (`no_such_tree`, `command_id_used`). */
export type Fault = { fault: FaultCode; code?: string | undefined }

export type Outcome<Value> = { ok: true; value: Value } | ({ ok: false } & Fault)

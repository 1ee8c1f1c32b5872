/** Frames of the Phoenix protocol as the client speaks it: [join_ref, ref, topic, event, payload]. */

export type Frame = {
  joinRef: string | null
  ref: string | null
  topic: string
  event: string
  payload: Record<string, unknown>
}

/** Null for anything else. */
export function readFrame(text: string): Frame | null {
  const parts = parsed(text)
  if (!Array.isArray(parts) || parts.length !== 5) return null
  const [joinRef, ref, topic, event, payload] = parts as unknown[]
  if (!isRef(joinRef) || !isRef(ref) || typeof topic !== 'string' || typeof event !== 'string') {
    return null
  }
  return { joinRef, ref, topic, event, payload: isObject(payload) ? payload : {} }
}

export function writeFrame({ joinRef, ref, topic, event, payload }: Frame): string {
  return JSON.stringify([joinRef, ref, topic, event, payload])
}

export function reply(
  to: Frame,
  status: 'ok' | 'error',
  response: Record<string, unknown> = {}
): Frame {
  return { ...to, event: 'phx_reply', payload: { status, response } }
}

export function isObject(value: unknown): value is Record<string, unknown> {
  return typeof value === 'object' && value !== null && !Array.isArray(value)
}

function isRef(value: unknown): value is string | null {
  return value === null || (typeof value === 'string' && value.length < 40)
}

function parsed(text: string): unknown {
  try {
    return JSON.parse(text)
  } catch {
    return null
  }
}

/** Reads a request's JSON within bounds. */
import type { IncomingMessage } from 'node:http'
import { type Answer, callError } from './answers'

export const largestBodyBytes = 1_000_000
/** A hundred thousand trees with all that is known of them, or a part of an archive. */
export const largestOrchardBytes = 32_000_000
const deepestNesting = 64

export type Body =
  | { state: 'read'; body: Record<string, unknown> }
  | { state: 'refused'; answer: Answer }

export async function readBody(
  request: IncomingMessage,
  mostBytes = largestBodyBytes
): Promise<Body> {
  const text = await readText(request, mostBytes)
  if (text === null) {
    return refused(413, 'body_too_large', `The request is larger than ${mostBytes / 1e6} MB.`)
  }
  if (text.trim() === '') return { state: 'read', body: {} }
  if (nestingOf(text) > deepestNesting) {
    return refused(400, 'PGRST102', 'The request is nested too deeply.')
  }
  const body = parsed(text)
  return body === null
    ? refused(400, 'PGRST102', 'The request is not a JSON object.')
    : { state: 'read', body }
}

/** Null when too large. The rest is read and dropped, so that the caller hears the answer. */
async function readText(request: IncomingMessage, mostBytes: number): Promise<string | null> {
  const chunks: Buffer[] = []
  let bytes = 0
  for await (const chunk of request as AsyncIterable<Buffer>) {
    bytes += chunk.length
    if (bytes <= mostBytes) chunks.push(chunk)
    else chunks.length = 0
    if (bytes > mostBytes + 20 * largestBodyBytes) {
      request.destroy()
      return null
    }
  }
  return bytes > mostBytes ? null : Buffer.concat(chunks).toString('utf8')
}

/** Counted before parsing: the database's parser goes as deep as it is led, and its stack is small. */
function nestingOf(text: string): number {
  let depth = 0
  let deepest = 0
  let isInString = false
  for (let i = 0; i < text.length; i += 1) {
    const character = text[i]
    if (isInString) {
      if (character === '\\') i += 1
      else if (character === '"') isInString = false
    } else if (character === '"') isInString = true
    else if (character === '[' || character === '{') depth += 1
    else if (character === ']' || character === '}') depth -= 1
    if (depth > deepest) deepest = depth
  }
  return deepest
}

function parsed(text: string): Record<string, unknown> | null {
  try {
    const value: unknown = JSON.parse(text)
    return typeof value === 'object' && value !== null && !Array.isArray(value)
      ? (value as Record<string, unknown>)
      : null
  } catch {
    return null
  }
}

function refused(status: number, code: string, message: string): Body {
  return { state: 'refused', answer: callError(status, code, message) }
}

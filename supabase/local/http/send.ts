/** Writes an answer, compressed where that pays. */
import type { IncomingMessage, ServerResponse } from 'node:http'
import { promisify } from 'node:util'
import { gzip } from 'node:zlib'
import type { Answer } from './answers'

const compress = promisify(gzip)
const smallestWorthwhileBytes = 1_400
const largeBytes = 32_000

export async function send(
  request: IncomingMessage,
  response: ServerResponse,
  answer: Answer
): Promise<void> {
  const headers: Record<string, string> = { 'cache-control': 'no-store', ...answer.headers }
  if (answer.body === undefined) {
    response.writeHead(answer.status, headers).end()
    return
  }
  headers['content-type'] = 'application/json; charset=utf-8'
  const text = typeof answer.body === 'string' ? answer.body : JSON.stringify(answer.body)
  const isCompressed =
    text.length > smallestWorthwhileBytes &&
    /\bgzip\b/.test(String(request.headers['accept-encoding'] ?? ''))
  const bytes = isCompressed ? await compressed(text) : Buffer.from(text)
  if (isCompressed) headers['content-encoding'] = 'gzip'
  headers['content-length'] = String(bytes.length)
  response.writeHead(answer.status, headers).end(bytes)
}

/** The sheet of all trees is the same for everybody who arrives, and takes 10 ms to compress. */
const recent = new Map<string, Promise<Buffer>>()

function compressed(text: string): Promise<Buffer> {
  if (text.length < largeBytes) return compress(text)
  const bytes = recent.get(text) ?? compress(text)
  recent.delete(text)
  recent.set(text, bytes)
  const oldest = recent.keys().next().value
  if (recent.size > 8 && oldest !== undefined) recent.delete(oldest)
  return bytes
}

/** Codes that links carry: 128 random bits, of which the database keeps a hash. */

import { createHash, randomBytes } from 'node:crypto'

export function newCode(): string {
  return randomBytes(16).toString('base64url')
}

export function hashOfCode(code: string): string {
  return createHash('sha256').update(code).digest('hex')
}

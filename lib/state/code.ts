/** The secret of a link: 128 random bits, of which only the hash is sent and stored. */

import { sha256Hex } from '@/lib/util/sha256'

export function newCode(): { code: string; codeHash: string } {
  const bytes = crypto.getRandomValues(new Uint8Array(16))
  const base64 = btoa(String.fromCharCode(...bytes))
  const code = base64.replaceAll('+', '-').replaceAll('/', '_').replaceAll('=', '')
  return { code, codeHash: sha256Hex(code) }
}

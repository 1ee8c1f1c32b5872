/** What carries a whole orchard may be large; everything else, and whoever is not signed in, may not. */

import type { IncomingMessage } from 'node:http'
import { Readable } from 'node:stream'
import { expect, test } from 'vitest'

import type { Engine } from '../../../supabase/local/engine/engine'
import { largestBodyBytes, largestOrchardBytes } from '../../../supabase/local/http/body'
import { routesOf } from '../../../supabase/local/http/routes'
import type { Tokens } from '../../../supabase/local/http/tokens'

/** Knows no function at all: what gets so far was read. */
const engine = { name: 'PGlite', query: async () => [] } as unknown as Engine
const tokens = {
  anonKey: 'the key',
  verifyAccess: async () => ({ state: 'valid', claims: { sub: 'ann' } }),
} as unknown as Tokens

const routes = routesOf(engine, tokens)

async function statusOf(name: string, bytes: number, bearer: string): Promise<number | undefined> {
  const text = JSON.stringify({ p_rows: 'x'.repeat(bytes - 13) })
  const request = Object.assign(Readable.from([Buffer.from(text)]), {
    method: 'POST',
    headers: { apikey: 'the key', authorization: `Bearer ${bearer}` },
  }) as unknown as IncomingMessage
  const handled = await routes(request, `/rest/v1/rpc/${name}`)
  return handled?.answer.status
}

test.each([
  ['claim_tree', largestBodyBytes, 'ann', 404],
  ['claim_tree', largestBodyBytes + 1, 'ann', 413],
  ['bring_in_trees', largestOrchardBytes, 'ann', 404],
  ['bring_in_trees', largestOrchardBytes + 1, 'ann', 413],
  ['put_archive_part', largestOrchardBytes, 'ann', 404],
  ['bring_in_trees', largestBodyBytes + 1, 'the key', 413],
])('%s with %i bytes by %s is answered by %i', async (name, bytes, bearer, status) => {
  expect(await statusOf(name, bytes, bearer)).toBe(status)
})

test('only a few large ones are read at once; the others hear that it is busy, and small ones pass', async () => {
  const large = () => statusOf('bring_in_trees', 100, 'ann')

  const all = await Promise.all([
    large(),
    large(),
    large(),
    large(),
    large(),
    statusOf('claim_tree', 100, 'ann'),
  ])

  expect(all.toSorted()).toEqual([404, 404, 404, 404, 404, 503])
  expect(await large()).toBe(404)
})

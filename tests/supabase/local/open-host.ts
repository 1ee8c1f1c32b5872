/** A host of the tests' own on a free port, with the real client to speak to it. */
import { createClient, type SupabaseClient } from '@supabase/supabase-js'
import WebSocket from 'ws'
import type { Engine } from '../../../supabase/local/engine/engine'
import { createHost, type Host } from '../../../supabase/local/host'
import type { Limits } from '../../../supabase/local/http/routes'
import { makeTokens, type Tokens } from '../../../supabase/local/http/tokens'

export type RunningHost = {
  host: Host
  tokens: Tokens
  url: string
  port: number
  logged: string[]
}

type Opening = { accessSeconds?: number; port?: number; limits?: Limits }

export const secret = Buffer.alloc(32, 7)

export async function openHost(
  engine: Engine,
  { accessSeconds = 3600, port = 0, limits }: Opening = {}
): Promise<RunningHost> {
  const tokens = await makeTokens(secret, accessSeconds)
  const logged: string[] = []
  const host = await createHost({
    engine,
    tokens,
    limits,
    log: (...entry) => logged.push(JSON.stringify(entry)),
  })
  const bound = await host.listen(port, '127.0.0.1')
  return { host, tokens, url: `http://127.0.0.1:${bound}`, port: bound, logged }
}

/** A phone: the real client, which keeps its session in memory. */
export function phone({ url, tokens }: Pick<RunningHost, 'url' | 'tokens'>): SupabaseClient {
  return createClient(url, tokens.anonKey, {
    auth: { autoRefreshToken: false, persistSession: true, storage: memory() },
    realtime: { transport: WebSocket as never, heartbeatIntervalMs: 1_000 },
  })
}

export async function signedIn(running: RunningHost) {
  const client = phone(running)
  const { data, error } = await client.auth.signInAnonymously()
  if (error || !data.session) throw error ?? new Error('No session.')
  return { client, session: data.session, userId: data.session.user.id }
}

function memory() {
  const kept = new Map<string, string>()
  return {
    getItem: (key: string) => kept.get(key) ?? null,
    setItem: (key: string, value: string) => void kept.set(key, value),
    removeItem: (key: string) => void kept.delete(key),
  }
}

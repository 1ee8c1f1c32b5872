/** A login made by a script, kept exactly as the app's own client keeps it in a browser's local storage. */

import { type BackendAddress, connect } from '@/lib/data/client'

import type { Call } from '../../supabase/seed/referee'

export type Login = {
  call: Call
  /** What a browser context needs to be signed in. */
  localStorage: { name: string; value: string }[]
}

export async function newLogin(backend: BackendAddress): Promise<Login> {
  const kept = new Map<string, string>()
  const connection = connect(backend, {
    auth: {
      autoRefreshToken: false,
      storage: {
        getItem: (name) => kept.get(name) ?? null,
        setItem: (name, value) => void kept.set(name, value),
        removeItem: (name) => void kept.delete(name),
      },
    },
    // Only calls are made here, but Node 20 has no socket of its own.
    realtime: { transport: class {} as never },
  })
  const client = await connection.client()
  const { error } = await client.auth.signInAnonymously()
  if (error) throw new Error(`Signing in failed: ${error.message}`)
  const localStorage = [...kept].map(([name, value]) => ({ name, value }))
  return { call: connection.call, localStorage }
}

/** A script as one more phone: the same client library, the same public functions and channels. */

import { createClient } from '@supabase/supabase-js'
import WebSocket from 'ws'

import type { Call } from './referee'

export type Backend = { url: string; anonKey: string }

export type PublicClient = {
  call: Call
  /** Says `ring` when something is broadcast or the channel was lost. What it returns stops it. */
  listen: (topic: string, ring: (what: 'event' | 'joined' | 'lost') => void) => () => void
  close: () => Promise<void>
}

/** Every page of Rowcall says where its backend is, as a browser finds it. */
export async function backendOf(address: string): Promise<Backend> {
  const { origin } = new URL(address)
  const page = await (await fetch(`${origin}/join`)).text()
  const [, found] = /id="rowcall-backend">([^<]*)</.exec(page) ?? []
  const { url, anonKey } = JSON.parse(found ?? '{}') as Partial<Backend>
  if (!anonKey) throw new Error(`${origin} is not Rowcall, or does not say where its backend is.`)
  return { url: url ?? origin, anonKey }
}

export async function signIn({ url, anonKey }: Backend): Promise<PublicClient> {
  const client = createClient(url, anonKey, {
    auth: { persistSession: false, autoRefreshToken: false, detectSessionInUrl: false },
    // Node 20 has no sockets of its own, and the two descriptions of one differ in small things.
    realtime: { transport: WebSocket as never },
  })
  const { error } = await client.auth.signInAnonymously()
  if (error) throw new Error(`Signing in at ${url} failed: ${error.message}`)
  await client.realtime.setAuth()

  return {
    call: async (name, values) => {
      const { data, error, status } = await client.rpc(name, values)
      return { status, body: error ?? data }
    },
    listen: (topic, ring) => {
      const channel = client.channel(topic, { config: { private: true } })
      channel
        .on('broadcast', { event: 'event' }, () => ring('event'))
        .subscribe((status) => ring(status === 'SUBSCRIBED' ? 'joined' : 'lost'))
      return () => void client.removeChannel(channel)
    },
    close: async () => {
      await client.removeAllChannels()
      client.realtime.disconnect()
    },
  }
}

/** The Supabase client, loaded when it is first needed: the first screen is painted without it. */

import type { SupabaseClient, SupabaseClientOptions } from '@supabase/supabase-js'

import type { Fault, Outcome } from '@/lib/events/answer'

import { faultOf } from './errors'

/** Null: the page's own origin, where the local host serves both. */
export type BackendAddress = { url: string | null; anonKey: string | null }

export type ClientOptions = SupabaseClientOptions<'public'>

/** The live channel's part, by its own file: under its name the bundler puts `left-out` in its place. */
const fetchRealtime = () => import('@supabase/realtime-js/dist/main/index.js')

export type Socket = InstanceType<Awaited<ReturnType<typeof fetchRealtime>>['RealtimeClient']>

export type Connection = {
  address: string
  client: () => Promise<SupabaseClient>
  /** The socket of the live channel. */
  realtime: () => Promise<Socket>
  /** One function by name. `userId`: only as this login. */
  call: (call: Call) => Promise<Outcome<unknown>>
}

export type Call = {
  name: string
  values: Record<string, unknown>
  limitMs: number
  userId?: string
}

/** Somebody else is signed in now, or nobody. */
const otherLogin: Outcome<never> = { ok: false, fault: 'signed_out', code: 'other_login' }

/** The local host takes any key for somebody who is not signed in yet. */
const anyKey = 'anon'

/** So that it is on its way while the page still comes to life. */
export async function fetchLibrary() {
  // Taken apart here, so that the bundler leaves out the rest.
  const { createClient } = await import('@supabase/supabase-js')
  return createClient
}

export function connect(backend: BackendAddress, options: ClientOptions = {}): Connection {
  const address = backend.url ?? location.origin
  const anonKey = backend.anonKey ?? anyKey
  let loading: Promise<SupabaseClient> | null = null
  let loadingRealtime: Promise<Socket> | null = null
  return { address, client, realtime, call }

  function client(): Promise<SupabaseClient> {
    loading ??= load().catch((error) => {
      // A script that did not come is asked for again the next time.
      loading = null
      throw error
    })
    return loading
  }

  async function load(): Promise<SupabaseClient> {
    const createClient = await fetchLibrary()
    return createClient(address, anonKey, {
      ...options,
      global: { ...options.global, fetch: answersOnly(options.global?.fetch ?? fetch) },
      auth: { detectSessionInUrl: false, ...options.auth },
    })
  }

  function realtime(): Promise<Socket> {
    loadingRealtime ??= loadRealtime().catch((error) => {
      loadingRealtime = null
      throw error
    })
    return loadingRealtime
  }

  async function loadRealtime(): Promise<Socket> {
    const [{ auth }, { RealtimeClient }] = await Promise.all([client(), fetchRealtime()])
    return new RealtimeClient(new URL('realtime/v1', address).href.replace('http', 'ws'), {
      ...options.realtime,
      params: { apikey: anonKey, ...options.realtime?.params },
      // Asked at each join and heartbeat, so a token that was renewed reaches the socket by itself.
      accessToken: async () => (await auth.getSession()).data.session?.access_token ?? anonKey,
    })
  }

  async function call(asked: Call): Promise<Outcome<unknown>> {
    return within(asked.limitMs, async (signal) => {
      const first = await callOnce(asked, signal)
      if (first.ok || first.fault !== 'signed_out' || first === otherLogin) return first
      // The token may only be too old: a phone's clock can be hours off.
      const { auth } = await client()
      const { error } = await auth.refreshSession()
      if (error) return isLost(error) ? first : { ok: false, fault: 'offline' }
      return callOnce(asked, signal)
    })
  }

  async function callOnce(asked: Call, signal: AbortSignal): Promise<Outcome<unknown>> {
    const supabase = await client()
    if (asked.userId !== undefined) {
      const { data, error } = await supabase.auth.getSession()
      if (error && !isLost(error)) return { ok: false, fault: 'offline' }
      if (data.session?.user.id !== asked.userId) return otherLogin
    }
    const { data, error, status } = await supabase.rpc(asked.name, asked.values).abortSignal(signal)
    return error ? { ok: false, ...faultOf({ ...error, status }) } : { ok: true, value: data }
  }
}

/** Whatever throws on the way is no answer: no script, no network, a page of somebody else's. */
async function within<Value>(
  limitMs: number,
  run: (signal: AbortSignal) => Promise<Outcome<Value>>
): Promise<Outcome<Value>> {
  const noAnswer: { ok: false } & Fault = { ok: false, fault: 'offline' }
  const over = new AbortController()
  const late = new Promise<typeof noAnswer>((resolve) => {
    over.signal.addEventListener('abort', () => resolve(noAnswer))
  })
  const timer = setTimeout(() => over.abort(), Math.max(0, limitMs))
  try {
    return await Promise.race([run(over.signal).catch(() => noAnswer), late])
  } finally {
    clearTimeout(timer)
  }
}

/**
 * A page of somebody else's in answer to a sign-in (a hotspot's, a proxy's) counts as no answer: the library takes every
 * 4xx for the end of the identity, and an anonymous one cannot come back.
 */
function answersOnly(ask: typeof fetch): typeof fetch {
  return async (input, init) => {
    const response = await ask(input, init)
    const isTheirs = response.headers.get('content-type')?.includes('json')
    if (response.ok || isTheirs || !String(input).includes('/auth/v1/')) return response
    throw new TypeError(`Not an answer of the backend: ${response.status}.`)
  }
}

/** The identity is gone, where other errors only mean that nobody answered. */
export function isLost({ status }: { status?: number | undefined }): boolean {
  return status !== undefined && status >= 400 && status < 500
}

/** A script as one more phone: the app's own door (lib/data), with sockets that Node does not have. */

import WebSocket from 'ws'

import { type BackendAddress, connect } from '@/lib/data/client'
import { type Ear, listener } from '@/lib/data/listen'

import type { Call } from './referee'

export type PublicClient = {
  call: Call
  /** Opens a live channel. What it returns closes it. */
  listen: (topic: string, ear: Ear) => () => void
  /** Drops the socket, as a phone that is put away. */
  close: () => Promise<void>
}

/** Every page of Rowcall says where its backend is; this finds it there as a browser does. */
export async function backendAt(address: string): Promise<BackendAddress> {
  const { origin } = new URL(address)
  const page = await fetch(`${origin}/join`).then((answer) => answer.text())
  const [, found] = /id="rowcall-backend"[^>]*>([^<]*)</.exec(page) ?? []
  if (found === undefined) throw new Error(`There is no Rowcall at ${origin}.`)
  const { url, anonKey } = JSON.parse(found) as BackendAddress
  return { url: url ?? origin, anonKey }
}

export async function signIn(backend: BackendAddress): Promise<PublicClient> {
  const connection = connect(backend, {
    auth: { persistSession: false, autoRefreshToken: false },
    // The library's idea of a socket has a member that ws leaves out.
    realtime: { transport: WebSocket as never },
  })
  const client = await connection.client()
  const { error } = await client.auth.signInAnonymously()
  if (error) throw new Error(`Signing in at ${backend.url} failed: ${error.message}`)
  return {
    call: connection.call,
    listen: listener(connection),
    close: async () => {
      // Taking leave keeps Node awake for ten seconds, so not where there is no socket.
      const socket = await connection.realtime()
      if (!socket.isConnected()) return
      await socket.removeAllChannels()
      await socket.disconnect()
    },
  }
}

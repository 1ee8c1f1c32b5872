/** Everything Supabase would do for the app, on one HTTP server, over whichever database is given. */
import { createServer, type IncomingMessage, type RequestListener, type Server } from 'node:http'
import { createServer as createSecureServer } from 'node:https'
import type { Duplex } from 'node:stream'
import type { Engine } from './engine/engine'
import { callError } from './http/answers'
import { type Handled, type Limits, routesOf } from './http/routes'
import { send } from './http/send'
import type { Tokens } from './http/tokens'
import { type Log, messageOf } from './log'
import { realtimeOf } from './realtime/realtime'

export type Certificate = { cert: Buffer; key: Buffer }

export type HostOptions = {
  engine: Engine
  tokens: Tokens
  log: Log
  certificate?: Certificate
  limits?: Limits | undefined
  /** Serves what is not a call: the pages. */
  pages?: RequestListener
  /** Takes sockets that are not ours: hot reload in development. */
  otherUpgrade?: (request: IncomingMessage, socket: Duplex, head: Buffer) => void
}

export type Host = {
  server: Server
  listen: (port: number, address?: string) => Promise<number>
  /** Stops taking requests, lets those under way finish, closes the sockets. The engine stays open. */
  close: () => Promise<void>
}

const finishMs = 5_000

export async function createHost(options: HostOptions): Promise<Host> {
  const { engine, tokens, log, certificate } = options
  const routes = routesOf(engine, tokens, options.limits)
  const realtime = await realtimeOf(engine, tokens, log)
  const listener: RequestListener = (request, response) => {
    const startedAt = performance.now()
    const path = (request.url ?? '/').split('?', 1)[0] ?? '/'
    const handled = routes(request, path)
    if (!handled) return (options.pages ?? noPages)(request, response)
    handled
      .catch((error): Handled => {
        log('error', 'failed', { path, message: messageOf(error) })
        const answer = callError(
          503,
          'unavailable',
          'The host is in trouble. Try again in a moment.'
        )
        return { route: path, answer }
      })
      .then(async ({ answer, route, login }) => {
        await send(request, response, answer)
        const ms = Math.round((performance.now() - startedAt) * 10) / 10
        log(answer.status >= 500 ? 'warn' : 'info', 'call', {
          route,
          status: answer.status,
          ms,
          login,
        })
      })
      .catch((error) => response.destroy(error instanceof Error ? error : undefined))
  }
  const server = certificate ? createSecureServer(certificate, listener) : createServer(listener)
  // Longer than a reverse proxy keeps its connections, so that it never writes into one we close.
  server.keepAliveTimeout = 75_000
  server.on('upgrade', (request: IncomingMessage, socket: Duplex, head: Buffer) => {
    socket.on('error', () => socket.destroy())
    if (realtime.upgrade(request, socket, head)) return
    if (options.otherUpgrade) options.otherUpgrade(request, socket, head)
    else socket.destroy()
  })

  return {
    server,
    listen: (port, address) => listen(server, port, address),
    close: async () => {
      const closed = new Promise<void>((resolve) => server.close(() => resolve()))
      realtime.close()
      server.closeIdleConnections()
      const impatience = setTimeout(() => server.closeAllConnections(), finishMs)
      await closed
      clearTimeout(impatience)
    },
  }
}

function listen(server: Server, port: number, address?: string): Promise<number> {
  return new Promise((resolve, reject) => {
    server.once('error', reject)
    server.listen(port, address, () => {
      server.off('error', reject)
      const bound = server.address()
      resolve(typeof bound === 'object' && bound ? bound.port : port)
    })
  })
}

const noPages: RequestListener = (_request, response) => {
  response.writeHead(404).end()
}

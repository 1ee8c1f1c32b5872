/** Next.js on our server: its pages, and in development its hot reload beside our sockets. */
import { EventEmitter } from 'node:events'
import type { IncomingMessage, RequestListener, Server } from 'node:http'
import type { Duplex } from 'node:stream'
import next from 'next'
import { root } from './root'

export type Pages = {
  handle: RequestListener
  /** Undefined in production, where the pages have no sockets. */
  upgrade?: (request: IncomingMessage, socket: Duplex, head: Buffer) => void
  close: () => Promise<void>
}

type Serving = { isDevelopment: boolean; address: string; port: number }

export async function preparePages({ isDevelopment, address, port }: Serving): Promise<Pages> {
  // Next closes the sockets of a server that it does not know, so it is given a stand-in, which hears
  // of those that are its own.
  const standIn = new EventEmitter()
  const app = next({
    dev: isDevelopment,
    dir: root,
    hostname: address,
    port,
    httpServer: standIn as unknown as Server,
  })
  await app.prepare()
  const handleRequest = app.getRequestHandler()
  return {
    handle: (request, response) => void handleRequest(request, response),
    ...(isDevelopment && {
      upgrade: (request: IncomingMessage, socket: Duplex, head: Buffer) =>
        void standIn.emit('upgrade', request, socket, head),
    }),
    close: () => app.close(),
  }
}

/** The pages need the port, and the host needs the pages: until they are there it says "in a moment". */
export class LatePages {
  there: Pages | null = null

  readonly handle: RequestListener = (request, response) => {
    if (this.there) this.there.handle(request, response)
    else response.writeHead(503, { 'retry-after': '2' }).end()
  }

  readonly upgrade = (request: IncomingMessage, socket: Duplex, head: Buffer): void => {
    if (this.there?.upgrade) this.there.upgrade(request, socket, head)
    else socket.destroy()
  }
}

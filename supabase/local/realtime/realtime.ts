/** The websocket of the host: lets phones in, and passes on what the database announces. */
import type { IncomingMessage } from 'node:http'
import type { Duplex } from 'node:stream'
import { WebSocketServer } from 'ws'
import type { Engine } from '../engine/engine'
import type { Tokens } from '../http/tokens'
import { type Log, messageOf } from '../log'
import { rightsOf } from './channel-right'
import { Channels } from './channels'
import { Phone } from './phone'

const path = '/realtime/v1/websocket'
const largestFrameBytes = 64_000
const mostPhones = 5_000
const sweepMs = 15_000

export type Realtime = {
  /** False when the upgrade is not ours. */
  upgrade: (request: IncomingMessage, socket: Duplex, head: Buffer) => boolean
  close: () => void
}

export async function realtimeOf(engine: Engine, tokens: Tokens, log: Log): Promise<Realtime> {
  const channels = new Channels()
  const rightOf = rightsOf(engine, tokens)
  const phones = new Set<Phone>()
  const sockets = new WebSocketServer({
    noServer: true,
    maxPayload: largestFrameBytes,
    perMessageDeflate: false,
  })
  const closeAll = (code: number, reason: string) => {
    for (const phone of phones) phone.close(code, reason)
  }
  await engine.listen(
    'realtime',
    (notification) => channels.announce(notification),
    // What was said meanwhile is lost: who reconnects asks for it.
    () => closeAll(1012, 'messages may be missing')
  )
  const sweep = setInterval(() => {
    for (const phone of phones) phone.endIfSilent(Date.now())
  }, sweepMs)
  sweep.unref()

  return {
    upgrade: (request, socket, head) => {
      const url = new URL(request.url ?? '', 'http://host')
      if (url.pathname !== path) return false
      if (url.searchParams.get('apikey') !== tokens.anonKey)
        return refuse(socket, '401 Unauthorized')
      if (url.searchParams.get('vsn') !== '2.0.0') return refuse(socket, '400 Bad Request')
      if (phones.size >= mostPhones) return refuse(socket, '503 Service Unavailable')
      sockets.handleUpgrade(request, socket, head, (accepted) => {
        const phone = new Phone(accepted, channels, rightOf, (error) => {
          log('warn', 'socket', { message: messageOf(error) })
          accepted.close(1011, 'try again')
        })
        phones.add(phone)
        accepted.on('close', () => phones.delete(phone))
      })
      return true
    },
    close: () => {
      clearInterval(sweep)
      closeAll(1001, 'the host stops')
      sockets.close()
    },
  }
}

function refuse(socket: Duplex, status: string): true {
  socket.end(`HTTP/1.1 ${status}\r\nConnection: close\r\nContent-Length: 0\r\n\r\n`)
  return true
}

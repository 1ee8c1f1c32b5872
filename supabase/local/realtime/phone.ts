/** One socket: the channels it has joined, what it asks, and when it has to go. */
import type { RawData, WebSocket } from 'ws'
import { Buckets } from '../http/limits'
import type { RightOf } from './channel-right'
import type { Channels } from './channels'
import { type Frame, isObject, readFrame, reply, writeFrame } from './frames'

const limits = {
  frames: { burst: 200, perSecond: 20 },
  mostChannels: 20,
  mostGarbage: 20,
  /** A phone this far behind asks for what it missed when it is back; meanwhile it would fill our memory. */
  mostWaitingBytes: 4_000_000,
  /** The client says something every 25 s. */
  silenceMs: 65_000,
}
/** The longest delay a timer takes. */
const longestTimerMs = 2_147_483_647

type Joined = { joinRef: string | null; timer: NodeJS.Timeout }

export class Phone {
  private readonly joined = new Map<string, Joined>()
  private readonly frames = new Buckets(limits.frames)
  private garbage = 0
  private heardAt = Date.now()
  /** One frame after the other: a leave must not overtake its join. */
  private last: Promise<void> = Promise.resolve()

  constructor(
    private readonly socket: WebSocket,
    private readonly channels: Channels,
    private readonly rightOf: RightOf,
    onTrouble: (error: unknown) => void
  ) {
    socket.on('message', (data, isBinary) => {
      this.last = this.last.then(() => this.take(data, isBinary)).catch(onTrouble)
    })
    socket.on('close', () => this.forgetAll())
    // 'close' follows; a frame that is too large or malformed is the other side's affair.
    socket.on('error', () => {})
  }

  hear(frame: Buffer): void {
    if (this.socket.bufferedAmount > limits.mostWaitingBytes) this.socket.terminate()
    else this.socket.send(frame, { binary: false })
  }

  close(code: number, reason: string): void {
    this.socket.close(code, reason)
  }

  endIfSilent(now: number): void {
    if (now - this.heardAt > limits.silenceMs) this.socket.terminate()
  }

  private async take(data: RawData, isBinary: boolean): Promise<void> {
    this.heardAt = Date.now()
    if (!this.frames.take('')) return this.close(1008, 'too many frames')
    // A binary frame is a client's own broadcast; here only the database speaks.
    const frame = isBinary ? null : readFrame(String(data))
    if (frame) return this.answer(frame)
    this.garbage += 1
    if (this.garbage > limits.mostGarbage) this.close(1003, 'not understood')
  }

  private async answer(frame: Frame): Promise<void> {
    if (frame.topic === 'phoenix') {
      return this.send(reply(frame, frame.event === 'heartbeat' ? 'ok' : 'error'))
    }
    switch (frame.event) {
      case 'phx_join':
        return this.join(frame)
      case 'phx_leave':
        this.forget(frame.topic)
        this.send(reply(frame, 'ok'))
        return this.send({ ...frame, ref: null, event: 'phx_close', payload: {} })
      case 'access_token':
        return this.renew(frame)
      default:
        return this.send(reply(frame, 'error', { reason: 'Only the database sends here.' }))
    }
  }

  private async join(frame: Frame): Promise<void> {
    const topic = topicOf(frame)
    const config = isObject(frame.payload.config) ? frame.payload.config : {}
    if (topic === null || config.private !== true) {
      return this.refuse(frame, 'PrivateOnly: Only private channels are allowed')
    }
    if (this.joined.size >= limits.mostChannels && !this.joined.has(frame.topic)) {
      return this.refuse(frame, 'ChannelRateLimitReached: Too many channels')
    }
    const right = await this.rightOf(frame.payload.access_token, topic)
    if (this.socket.readyState !== this.socket.OPEN) return
    if (right.state === 'refused') return this.refuse(frame, right.reason)
    this.forget(frame.topic)
    this.keep(frame.topic, frame.joinRef, right.expiresAt)
    this.channels.join(topic, this)
    this.send(reply(frame, 'ok', { postgres_changes: [] }))
  }

  /** A newer sign-in for a channel that is joined: the right is looked at again, and lasts as long as it. */
  private async renew(frame: Frame): Promise<void> {
    const topic = topicOf(frame)
    const joined = this.joined.get(frame.topic)
    if (topic === null || !joined) return
    const right = await this.rightOf(frame.payload.access_token, topic)
    if (this.joined.get(frame.topic) !== joined) return
    if (right.state === 'refused') return this.end(frame.topic, right.reason)
    clearTimeout(joined.timer)
    this.keep(frame.topic, joined.joinRef, right.expiresAt)
  }

  private keep(channel: string, joinRef: string | null, expiresAt: number): void {
    const leftMs = Math.min(Math.max(expiresAt - Date.now(), 0), longestTimerMs)
    const timer = setTimeout(() => this.end(channel, 'Token has expired'), leftMs)
    timer.unref()
    this.joined.set(channel, { joinRef, timer })
  }

  private end(channel: string, message: string): void {
    const { joinRef } = this.joined.get(channel) ?? { joinRef: null }
    this.forget(channel)
    const frame = { joinRef, ref: null, topic: channel }
    const payload = { extension: 'system', status: 'error', message, channel }
    this.send({ ...frame, event: 'system', payload })
    this.send({ ...frame, event: 'phx_close', payload: {} })
  }

  private forget(channel: string): void {
    const joined = this.joined.get(channel)
    if (!joined) return
    clearTimeout(joined.timer)
    this.joined.delete(channel)
    this.channels.leave(channel.slice(prefix.length), this)
  }

  private forgetAll(): void {
    for (const channel of [...this.joined.keys()]) this.forget(channel)
  }

  private refuse(frame: Frame, reason: string): void {
    this.send(reply(frame, 'error', { reason }))
  }

  private send(frame: Frame): void {
    if (this.socket.readyState === this.socket.OPEN) this.socket.send(writeFrame(frame))
  }
}

const prefix = 'realtime:'

function topicOf({ topic }: Frame): string | null {
  const isOurs = topic.startsWith(prefix) && topic.length > prefix.length && topic.length < 200
  return isOurs ? topic.slice(prefix.length) : null
}

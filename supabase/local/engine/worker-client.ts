/** The main thread's end of the worker in which PGlite runs: questions with numbers, and notifications. */
import type { Worker } from 'node:worker_threads'
import { startWorker } from './beside'
import { SqlError } from './engine'
import type { Reply, Request, WireError } from './pglite-worker'

type Waiting = { resolve: (rows: unknown[]) => void; reject: (error: Error) => void }
type Unnumbered<R> = R extends { id: number } ? Omit<R, 'id'> : never

/** The worker answers under this number once the database is open. */
const openId = 0

export class WorkerClient {
  private readonly worker: Worker
  private readonly waiting = new Map<number, Waiting>()
  private readonly listeners = new Map<string, (payload: string) => void>()
  private lastId = openId
  private death: Error | null = null
  private isEnding = false
  readonly opened: Promise<unknown>

  constructor(
    folder: string,
    private readonly onDeath: (error: Error) => void
  ) {
    this.worker = startWorker('pglite-worker', { workerData: { folder } })
    this.worker.on('message', (reply: Reply) => this.take(reply))
    this.worker.on('error', (error) => this.die(error))
    this.worker.on('exit', () => this.die(new Error('The database thread has ended.')))
    this.opened = this.answerTo(openId)
  }

  ask(request: Unnumbered<Request>): Promise<unknown[]> {
    if (this.death) return Promise.reject(this.death)
    this.lastId += 1
    const answer = this.answerTo(this.lastId)
    this.worker.postMessage({ ...request, id: this.lastId })
    return answer
  }

  async listen(channel: string, onPayload: (payload: string) => void): Promise<void> {
    this.listeners.set(channel, onPayload)
    await this.ask({ kind: 'listen', channel })
  }

  async end(): Promise<void> {
    this.isEnding = true
    await this.worker.terminate()
  }

  private answerTo(id: number): Promise<unknown[]> {
    return new Promise((resolve, reject) => this.waiting.set(id, { resolve, reject }))
  }

  private take(reply: Reply): void {
    if (reply.kind === 'notification') {
      this.listeners.get(reply.channel)?.(reply.payload)
      return
    }
    const caller = this.waiting.get(reply.id)
    this.waiting.delete(reply.id)
    if (reply.kind === 'done') caller?.resolve(reply.rows)
    else caller?.reject(errorOf(reply.error))
  }

  private die(error: Error): void {
    this.death ??= error
    for (const caller of this.waiting.values()) caller.reject(error)
    this.waiting.clear()
    if (!this.isEnding) this.onDeath(error)
    this.isEnding = true
  }
}

function errorOf(error: WireError): Error {
  return error.code === null
    ? new Error(error.message)
    : new SqlError(error.code, error.message, error.detail, error.hint)
}

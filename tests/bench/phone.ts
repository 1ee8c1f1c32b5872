/** A phone as the host sees it: plain requests and a plain socket, so that a bench measures the host and not a library. */

import { randomUUID } from 'node:crypto'
import WebSocket from 'ws'

export type Values = Record<string, unknown>
export type Reply = { status: number; body: Values & { refused?: unknown } }

export class Phone {
  constructor(
    readonly address: string,
    readonly anonKey: string,
    readonly token: string,
    readonly orchard = '',
    readonly person = ''
  ) {}

  static async signUp(address: string, anonKey: string): Promise<Phone> {
    const body = { data: {}, gotrue_meta_security: {} }
    const reply = await post(`${address}/auth/v1/signup`, anonKey, anonKey, body)
    if (reply.status !== 200) throw new Error(`Signing up answered ${reply.status}.`)
    return new Phone(address, anonKey, String(reply.body.access_token))
  }

  call(name: string, values: Values): Promise<Reply> {
    return post(`${this.address}/rest/v1/rpc/${name}`, this.anonKey, this.token, values)
  }

  /** A command of this person, or of another for whom this lead acts. */
  async must(
    name: string,
    values: Values = {},
    person = this.person
  ): Promise<Reply & { id: string }> {
    const id = randomUUID()
    const whose = { p_orchard: this.orchard, p_person: person, p_command: id }
    const reply = await this.call(name, { ...whose, ...values })
    if (reply.status !== 200 || reply.body.refused)
      throw new Error(`${name} was not accepted: ${reply.status} ${JSON.stringify(reply.body)}`)
    return { ...reply, id }
  }

  /** Signs in by a link: as whom it was made for, or as somebody new of this name. */
  async redeem(code: string, name?: string): Promise<Phone> {
    const values = {
      p_code: code,
      p_command: randomUUID(),
      ...(name && { p_name: name, p_age_band: 'adult' }),
    }
    const { status, body } = await this.call('redeem', values)
    if (status !== 200 || body.refused)
      throw new Error(`redeem answered ${status} ${JSON.stringify(body)}`)
    return this.as(String(body.orchard), String(body.person))
  }

  as(orchard: string, person: string): Phone {
    return new Phone(this.address, this.anonKey, this.token, orchard, person)
  }

  /** Joins the orchard's channel; resolves once it is joined. */
  async listen(channelEpoch: number, hear: (payload: Values) => void): Promise<WebSocket> {
    const url = `${this.address.replace('http', 'ws')}/realtime/v1/websocket?apikey=${this.anonKey}&vsn=2.0.0`
    const socket = new WebSocket(url)
    const topic = `realtime:orchard:${this.orchard}:${channelEpoch}`
    const config = {
      private: true,
      broadcast: { ack: false, self: false },
      presence: { key: '' },
      postgres_changes: [],
    }
    socket.on('open', () =>
      socket.send(
        JSON.stringify(['1', '1', topic, 'phx_join', { config, access_token: this.token }])
      )
    )
    await new Promise<void>((resolve, reject) => {
      socket.on('error', reject)
      socket.on('message', (data) => {
        const [, , , event, payload] = JSON.parse(String(data)) as [
          null,
          null,
          string,
          string,
          Values,
        ]
        if (event === 'phx_reply')
          payload.status === 'ok' ? resolve() : reject(new Error(JSON.stringify(payload)))
        if (event === 'broadcast') hear(payload.payload as Values)
      })
    })
    return socket
  }
}

async function post(url: string, apikey: string, token: string, body: Values): Promise<Reply> {
  const answer = await fetch(url, {
    method: 'POST',
    headers: { apikey, authorization: `Bearer ${token}`, 'content-type': 'application/json' },
    body: JSON.stringify(body),
  })
  const text = await answer.text()
  return { status: answer.status, body: text === '' ? {} : JSON.parse(text) }
}

/** Many phones: from commit to phone, and two hundred people joining at once from one address. */

import { request } from 'node:http'
import { atMost, type Figure, kB, ms, noted, share } from './figures'
import { type BenchOrchard, joinCode } from './orchard'
import { Phone } from './phone'

const pause = (forMs: number) => new Promise((resolve) => setTimeout(resolve, forMs))

/** 200 phones listen; 20 events a second for ten seconds. From the referee's clock in the event to the phone. */
export async function benchCommitToPhone(
  listeners: readonly Phone[],
  workers: readonly Phone[]
): Promise<Figure[]> {
  const lags: number[] = []
  const channelEpoch = await channelEpochOf(listeners[0])
  const sockets = await Promise.all(
    listeners.map((phone) =>
      phone.listen(channelEpoch, ({ at }) => {
        if (typeof at === 'string') lags.push(Date.now() - Date.parse(at))
      })
    )
  )
  const events = 200
  for (let event = 0; event < events; event++) {
    const worker = workers[event % workers.length]
    const isBreaking = Math.floor(event / workers.length) % 2 === 0
    void worker?.must(isBreaking ? 'start_break' : 'end_break')
    await pause(50)
  }
  await pause(1000)
  for (const socket of sockets) socket.terminate()
  return [
    noted('events heard', `${lags.length} of ${events * listeners.length}`),
    atMost(
      `commit to phone, ${listeners.length} phones, 20 events/s, p95`,
      share(lags, 0.95),
      25,
      ms
    ),
    atMost('the same, p99', share(lags, 0.99), 100, ms),
  ]
}

/** Sign-up, link, sheet, snapshot, channel: all a phone needs, 200 times in ten seconds from one address. */
export async function benchJoining(
  orchard: BenchOrchard
): Promise<{ figures: Figure[]; phones: Phone[] }> {
  const { manager } = orchard
  const code = await joinCode(orchard)
  const channelEpoch = await channelEpochOf(manager)
  const tookMs: number[] = []
  const failures: string[] = []
  const phones: Phone[] = []
  const joins = Array.from({ length: 200 }, async (_, index) => {
    await pause(index * 50)
    const startedAt = performance.now()
    try {
      const person = await (await Phone.signUp(manager.address, manager.anonKey)).redeem(
        code,
        `Joiner ${index}`
      )
      const mine = { p_orchard: person.orchard, p_person: person.person }
      const { body } = await person.call('snapshot', mine)
      await rawCall(person, 'tree_sheet', {
        p_orchard: person.orchard,
        p_version: body.sheetVersion,
      })
      const socket = await person.listen(channelEpoch, () => {})
      tookMs.push(performance.now() - startedAt)
      phones.push(person)
      socket.terminate()
    } catch (error) {
      failures.push(String(error))
    }
  })
  await Promise.all(joins)
  if (failures[0]) console.log(failures[0])
  return {
    phones,
    figures: [
      atMost('200 people joining in 10 s: refused or failed', failures.length, 0, (value) =>
        value.toFixed(0)
      ),
      noted('the same, p50', ms(share(tookMs, 0.5))),
      atMost('the same, p95', share(tookMs, 0.95), 1000, ms),
    ],
  }
}

/** The sheet of ten thousand trees and the live part of the snapshot, as they travel. */
export async function benchSheet(phone: Phone): Promise<Figure[]> {
  const mine = { p_orchard: phone.orchard, p_person: phone.person }
  const sheetMs: number[] = []
  let sheetBytes = 0
  for (let time = 0; time < 30; time++) {
    const startedAt = performance.now()
    sheetBytes = (await rawCall(phone, 'tree_sheet', { p_orchard: phone.orchard, p_version: 0 }))
      .bytes
    sheetMs.push(performance.now() - startedAt)
  }
  const live = await rawCall(phone, 'snapshot', mine)
  return [
    atMost('sheet of 10,000 trees, gzipped', sheetBytes, 120_000, kB),
    atMost('the same, p50', share(sheetMs, 0.5), 20, ms),
    atMost('live part with 4,000 trees done, gzipped', live.bytes, 15_000, kB),
  ]
}

async function channelEpochOf(phone: Phone | undefined): Promise<number> {
  if (!phone) throw new Error('There is nobody to listen.')
  const { body } = await phone.call('snapshot', {
    p_orchard: phone.orchard,
    p_person: phone.person,
  })
  return Number(body.channelEpoch)
}

/** The bytes as they come over the wire. */
function rawCall(
  phone: Phone,
  name: string,
  values: Record<string, unknown>
): Promise<{ bytes: number }> {
  return new Promise((resolve, reject) => {
    const call = request(
      `${phone.address}/rest/v1/rpc/${name}`,
      {
        method: 'POST',
        headers: {
          apikey: phone.anonKey,
          authorization: `Bearer ${phone.token}`,
          'content-type': 'application/json',
          'accept-encoding': 'gzip',
        },
      },
      (answer) => {
        let bytes = 0
        answer.on('data', (chunk: Buffer) => {
          bytes += chunk.length
        })
        answer.on('end', () =>
          answer.statusCode === 200
            ? resolve({ bytes })
            : reject(new Error(`${name} answered ${answer.statusCode}`))
        )
      }
    )
    call.on('error', reject)
    call.end(JSON.stringify(values))
  })
}

/** What a restore changes, so that no phone takes an old number for a new one. */

import { afterAll, beforeAll, describe, expect, test } from 'vitest'

import { engines, type TestDatabase } from '../support/engines'
import { newOrchard } from '../support/orchard'

describe.each(engines)('after a restore on $name', ({ open }) => {
  let database: TestDatabase
  beforeAll(async () => {
    database = await open()
  }, 60_000)
  afterAll(() => database.close())

  test('every orchard has a new epoch and a new channel, and phones start again', async () => {
    const { manager } = await newOrchard(database)
    const state = async () =>
      (await manager.read('snapshot', { person: manager.id })) as {
        epoch: string
        channelEpoch: number
        head: number
      }
    const before = await state()

    await database.asOwner('select private.after_restore()')

    const after = await state()
    expect(after.epoch).not.toBe(before.epoch)
    expect(after).toEqual({ ...before, epoch: after.epoch, channelEpoch: before.channelEpoch + 1 })
    expect(
      await manager.read('events_after', {
        person: manager.id,
        epoch: before.epoch,
        n: before.head,
      })
    ).toEqual({ reset: true })
  })
})

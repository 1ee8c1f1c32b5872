import { afterAll, beforeAll, describe, expect, test } from 'vitest'

import { engines, type TestDatabase } from '../support/engines'
import { lastEvent, readyCrew } from '../support/orchard'

const thick = { tree: 3, kind: 'arborist', sign: 'too_high_or_thick', severity: 'high' } as const
const reasons = [
  { code: 'limb_thick', seen: true, value: 14.5, limit: 10 },
  { code: 'too_high', seen: false },
]
const limb = { cm: 14.5, bearingDeg: 270 }

describe.each(engines)('why a tree is the arborist’s on $name', ({ open }) => {
  let db: TestDatabase
  let crew: Awaited<ReturnType<typeof readyCrew>>
  beforeAll(async () => {
    db = await open()
    crew = await readyCrew(db)
  })
  afterAll(() => db.close())

  test('the reasons and the limb are kept, told to everybody, and in every snapshot', async () => {
    const { orchard, ann, bo } = crew

    const { command: flag } = await ann.must('flag_tree', { ...thick, reasons, limb })

    expect(await lastEvent(orchard)).toMatchObject({ kind: 'flag_raised', body: { reasons, limb } })
    expect(await bo.read('snapshot', { person: bo.id })).toMatchObject({
      flags: { [flag]: { reasons, limb } },
    })
  })

  test('nobody asked is something else than asked, and nothing found', async () => {
    const { ann } = crew
    const { command: asked } = await ann.must('flag_tree', { ...thick, reasons: [] })
    const { command: not } = await ann.must('flag_tree', { ...thick, tree: 4 })

    const kept = await db.asOwner('select id, reasons from flags where id in ($1, $2)', [
      asked,
      not,
    ])
    expect(new Map(kept.map(({ id, reasons }) => [id, reasons]))).toEqual(
      new Map([
        [asked, []],
        [not, null],
      ])
    )
  })

  const reason = { code: 'crack', seen: true }
  test.each<[string, object]>([
    ['reasons that are no list', { reasons: reason }],
    ['a reason that is a word', { reasons: ['crack'] }],
    ['a reason without a code', { reasons: [{ seen: true }] }],
    ['a sentence for a code', { reasons: [{ ...reason, code: 'Ask Pat.' }] }],
    ['a reason that nobody saw or did not see', { reasons: [{ code: 'crack' }] }],
    ['a word for a measure', { reasons: [{ ...reason, value: 'thick' }] }],
    ['less than nothing', { reasons: [{ ...reason, value: -1 }] }],
    ['a reason that says more', { reasons: [{ ...reason, note: 'Ask Pat.' }] }],
    ['too many reasons', { reasons: Array.from({ length: 21 }, () => reason) }],
    ['a limb that is a list', { limb: [14] }],
    ['a limb as thick as a house', { limb: { cm: 301 } }],
    ['a limb beyond the compass', { limb: { bearingDeg: 361 } }],
    ['a limb that says more', { limb: { cm: 14, note: 'Ask Pat.' } }],
    ['reasons of a disease', { kind: 'disease', sign: 'gum', reasons: [] }],
    ['a limb of a disease', { kind: 'disease', sign: 'gum', limb: {} }],
  ])('%s: malformed, and no flag', async (_, change) => {
    const reply = await crew.ann.send('flag_tree', { ...thick, tree: 12, ...change })

    expect(reply.status).toBe(400)
    expect(await db.asOwner('select id from flags where tree_no = 12')).toEqual([])
  })
})

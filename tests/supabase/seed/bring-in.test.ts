import { mkdtempSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, beforeAll, beforeEach, describe, expect, test } from 'vitest'

import { type BringIn, bringIn } from '../../../supabase/seed/bring-in-run'
import { ends } from '../../../supabase/seed/ends'
import { signInInside } from '../../../supabase/seed/inside'
import { setUpLink } from '../../../supabase/seed/links'
import { engines, type TestDatabase } from '../../support/engines'

const header =
  'block,block_name,row,place,species,cultivar,habit,planted_year,trunk_cm,height_cm,asks_saw,life,lat,lon'
const good = [
  header,
  'N,North,1,1,apple,Jonathan,both,1990,22.5,310,yes,standing,41.05,-97.9',
  'N,North,1,2,,,,,,,,gap,,',
  'N,North,2,1,pear,Bartlett,spur,,,,no,dead,,',
].join('\n')
const bad = [
  header,
  'N,North,1,1,appel,,,1990,,,no,standing,,',
  'N,North,1,2,pear,,,soon,,,no,standing,,',
  'N,North,1,2,pear,,,,,,no,standing,,',
].join('\n')

describe.each(engines)('bringing a file of trees in, on $name', ({ open }) => {
  let db: TestDatabase
  let folder: string
  beforeAll(async () => {
    db = await open()
    folder = mkdtempSync(join(tmpdir(), 'rowcall-bring-in-'))
  }, 60_000)
  afterAll(() => db.close())

  const said: string[] = []
  beforeEach(() => said.splice(0))

  async function bring(table: string, wish: Partial<BringIn> & { link: string }) {
    const file = join(folder, 'trees.csv')
    writeFileSync(file, table)
    const call = await signInInside(db.engine)()
    return bringIn(
      { file, language: 'en', ...wish },
      (line) => said.push(line),
      async () => ({ call, close: async () => {} })
    )
  }

  const founding = { name: 'Two Ponds', manager: 'Berit', timeZone: 'Europe/Madrid' }
  const fresh = async () => `http://orchard.test${(await setUpLink(db.engine)).path}`
  const lastLink = () => said.at(-1) ?? ''
  const treesIn = async () =>
    (await db.asOwner<{ count: number }>('select count(*)::integer from public.trees'))[0]?.count
  const orchardsIn = async () =>
    (await db.asOwner<{ count: number }>('select count(*)::integer from public.orchards'))[0]?.count

  test('a set-up link makes the orchard, brings every row in and hands the manager a way in', async () => {
    const before = (await treesIn()) ?? 0

    const end = await bring(good, { link: await fresh(), ...founding })

    expect(end).toBe(ends.allIn)
    expect(said[0]).toBe(
      'Brought in: 3 trees in 1 blocks, 2 cultivars. 2 of the places have no standing tree.'
    )
    expect(await treesIn()).toBe(before + 3)
    expect(
      await db.asOwner(
        `select species, trunk_cm::text, height_cm, asks_saw, life, lat_e7, lon_e7 from public.trees
         order by orchard_id, no desc limit 1 offset 2`
      )
    ).toEqual([
      {
        species: 'apple',
        trunk_cm: '22.5',
        height_cm: 310,
        asks_saw: true,
        life: 'standing',
        lat_e7: 410_500_000,
        lon_e7: -979_000_000,
      },
    ])
    expect(lastLink()).toMatch(/^http:\/\/orchard\.test\/join#[\w-]{22}$/)
  })

  test('the same file sent twice adds nothing', async () => {
    await bring(good, { link: await fresh(), ...founding })
    const before = await treesIn()

    const end = await bring(good, { link: lastLink() })

    expect(end).toBe(ends.allIn)
    expect(said.at(-1)).toBe('This file was brought in before. Nothing was added.')
    expect(await treesIn()).toBe(before)
  })

  test('a place that the orchard has already is named by its line, and the rest does not come in', async () => {
    await bring(good, { link: await fresh(), ...founding })
    const before = await treesIn()
    const more = `${header}\nN,North,3,1,plum,,,,,,no,standing,,\n\nN,North,1,1,plum,,,,,,no,standing,,`

    const end = await bring(more, { link: lastLink() })

    expect(end).toBe(ends.rowsWrong)
    expect(said.slice(-2)).toEqual([
      'Line 4: The orchard has a tree at this place already. Change the place, or take the line out.',
      'Nothing was brought in. Mend these rows and try again.',
    ])
    expect(await treesIn()).toBe(before)
  })

  test('bad rows are all named with what to do, and neither link nor orchard is touched', async () => {
    const link = await fresh()
    const before = { trees: await treesIn(), orchards: await orchardsIn() }

    const end = await bring(bad, { link, ...founding })

    expect(end).toBe(ends.rowsWrong)
    expect(said).toEqual([
      expect.stringMatching(/^Line 2: species cannot be “appel”\. Write one of: apple, /),
      expect.stringMatching(
        /^Line 3: planted_year is “soon”\. Write the year with four digits, within 1700–\d{4}\.$/
      ),
      'Nothing was brought in. Mend these rows and try again.',
    ])
    expect({ trees: await treesIn(), orchards: await orchardsIn() }).toEqual(before)
    expect(await bring(good, { link, ...founding })).toBe(ends.allIn)
  })

  test('rows that quarrel with each other are named too', async () => {
    const twice = `${good}\nN,South,2,1,pear,,,,,,no,standing,,`

    expect(await bring(twice, { link: await fresh(), ...founding })).toBe(ends.rowsWrong)
    expect(said).toEqual([
      'Line 5: Line 4 has the same block, row and place. Change one of them.',
      expect.stringMatching(/^Line 5: .*South/),
      'Nothing was brought in. Mend these rows and try again.',
    ])
  })

  test('a set-up link asks for what an orchard needs', async () => {
    expect(await bring(good, { link: await fresh(), name: 'Two Ponds' })).toBe(ends.missing)
    expect(said).toEqual(['Also needed: --manager, --time-zone. See --help.'])
  })

  test('an unknown time zone is said before the link is used', async () => {
    const link = await fresh()

    expect(await bring(good, { link, ...founding, timeZone: 'Moon/Rim' })).toBe(ends.missing)
    expect(await bring(good, { link, ...founding })).toBe(ends.allIn)
  })

  test.each([
    { link: 'http://orchard.test/join#nobodyknowsthiscode', why: 'unknown' },
    { link: 'http://orchard.test/set-up#nobodyknowsthiscode', why: 'unknown' },
  ])('a link that nobody made lets nobody in: $link', async ({ link }) => {
    expect(await bring(good, { link, ...founding })).toBe(ends.notLetIn)
    expect(said).toEqual(['This link is wrong, used up or over. Ask for a new one.'])
  })

  test('what is no link is said so, in Spanish too', async () => {
    expect(await bring(good, { link: 'join', language: 'es' })).toBe(ends.notLetIn)
    expect(said).toEqual([
      'Esto no es un enlace de Rowcall: no lleva un código tras un #. Cópialo entero.',
    ])
  })

  test('without a server nothing is used up and it is said who does not answer', async () => {
    const file = join(folder, 'trees.csv')
    const end = await bringIn(
      { file, language: 'en', link: await fresh(), ...founding },
      (line) => said.push(line),
      () => Promise.reject(new Error('fetch failed'))
    )

    expect(end).toBe(ends.noAnswer)
    expect(said).toEqual(['Rowcall at http://orchard.test does not answer. Is it running?'])
  })
})

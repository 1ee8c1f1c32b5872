import { mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, describe, expect, test } from 'vitest'
import { addressesOf, sentencesOf } from '../../../supabase/local/addresses'
import { Buckets } from '../../../supabase/local/http/limits'
import { makeDataFolder } from '../../../supabase/local/keep/secrets'
import { readSettings } from '../../../supabase/local/settings'
import { certificateKeyPem, certificatePem } from '../../support/certificate'

const folder = mkdtempSync(join(tmpdir(), 'rowcall-settings-'))
afterAll(() => rmSync(folder, { recursive: true }))

describe('settings', () => {
  test('without any, port 4040 on all interfaces, PGlite, http, and data outside the clone', () => {
    const { port, address, databaseUrl, certificate, dataFolder } = readSettings({})

    expect({ port, address, databaseUrl, certificate }).toEqual({
      port: 4040,
      address: '0.0.0.0',
      databaseUrl: null,
      certificate: null,
    })
    expect(dataFolder.startsWith(process.cwd())).toBe(false)
  })

  test.each(['x', '-1', '70000', '1.5'])('PORT=%s is refused with a sentence', (PORT) => {
    expect(() => readSettings({ PORT })).toThrow(/PORT is .*must be a number/)
  })

  test.each([
    'http://ground.example/{z}/{x}/{y}.png',
    'https://ground.example/{z}/{x}.png',
    'https://{s}.ground.example/{z}/{x}/{y}.png',
    'ground',
  ])('pictures of the ground from %s are refused with a sentence', (ROWCALL_TILES) => {
    expect(() => readSettings({ ROWCALL_TILES, ROWCALL_TILES_BY: 'x' })).toThrow('https://')
  })

  test('pictures of the ground need to say whose they are', () => {
    const ROWCALL_TILES = 'https://ground.example/{z}/{x}/{y}.png'

    expect(() => readSettings({ ROWCALL_TILES })).toThrow('whose pictures')
    expect(() => readSettings({ ROWCALL_TILES, ROWCALL_TILES_BY: 'x' })).not.toThrow()
  })

  test('a certificate needs both its files, readable and of each other', () => {
    const file = join(folder, 'cert.pem')
    const key = join(folder, 'key.pem')
    writeFileSync(file, certificatePem)
    writeFileSync(key, certificateKeyPem)

    expect(() => readSettings({ ROWCALL_TLS_CERT: file })).toThrow('both')
    expect(() => readSettings({ ROWCALL_TLS_CERT: file, ROWCALL_TLS_KEY: 'none' })).toThrow(
      'ROWCALL_TLS_KEY names cannot be read'
    )
    expect(() => readSettings({ ROWCALL_TLS_CERT: file, ROWCALL_TLS_KEY: file })).toThrow(
      'not a certificate and its key'
    )
    expect(
      readSettings({ ROWCALL_TLS_CERT: file, ROWCALL_TLS_KEY: key }).certificate
    ).not.toBeNull()
  })

  test.each(['nonsense', 'mysql://u:p@h/d', '5432'])(
    'DATABASE_URL=%s is refused with a sentence',
    (DATABASE_URL) => {
      expect(() => readSettings({ DATABASE_URL })).toThrow(/^DATABASE_URL is an address such as/)
    }
  )

  test.each(['file', 'file/below'])(
    'data in a %s are refused with a sentence that says what to set',
    (name) => {
      writeFileSync(join(folder, 'file'), '')

      expect(() => makeDataFolder(join(folder, name))).toThrow(/cannot be kept .* Set ROWCALL_DATA/)
    }
  )
})

describe('addresses', () => {
  test('plain http is a trial, https a real day', () => {
    const trial = sentencesOf(addressesOf('0.0.0.0', 4040, false)).join(' ')
    const real = sentencesOf(addressesOf('0.0.0.0', 4040, true)).join(' ')

    expect(trial).toContain('http://localhost:4040')
    expect(trial).toContain('For a trial')
    expect(real).toContain('https://localhost:4040')
    expect(real).toContain('A real day is possible')
  })

  test('one interface is one address', () => {
    expect(addressesOf('127.0.0.1', 1, false)).toMatchObject({ network: [] })
    expect(addressesOf('192.0.2.7', 1, false)).toMatchObject({
      thisMachine: null,
      network: ['http://192.0.2.7:1'],
    })
    expect(addressesOf('2001:db8::1', 1, false).network).toEqual(['http://[2001:db8::1]:1'])
  })
})

test('a bucket allows its burst, then as many as come back with time, for each key alone', () => {
  let now = 0
  const buckets = new Buckets({ burst: 3, perSecond: 2 }, () => now)
  const taken = (key: string) => [1, 2, 3, 4].map(() => buckets.take(key))

  expect(taken('ann')).toEqual([true, true, true, false])
  expect(taken('bo')).toEqual([true, true, true, false])
  now = 500
  expect(taken('ann')).toEqual([true, false, false, false])
  now = 60_000
  expect(taken('ann')).toEqual([true, true, true, false])
})

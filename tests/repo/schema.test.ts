import { readFileSync } from 'node:fs'
import { expect, test } from 'vitest'

import { readMigrations } from '../../supabase/local/keep/migrate'
import { schemaFile, schemaOf } from '../../supabase/local/schema'
import { engines } from '../support/engines'
import { textOf } from './files'

test('supabase/schema.sql is what the migrations make (else: npm run schema)', async () => {
  const pglite = engines.find(({ name }) => name === 'PGlite')
  if (!pglite) throw new Error('PGlite is not among the engines.')
  const database = await pglite.open()

  const made = await schemaOf((sql) => database.asOwner(sql))
  await database.close()

  expect(readFileSync(schemaFile, 'utf8')).toBe(made)
})

test('no two migrations have one number: Supabase applies each number once', () => {
  const numbers = readMigrations().map(({ name }) => name.split('_')[0])
  expect(numbers.filter((number, at) => numbers.indexOf(number) !== at)).toEqual([])
})

test('both parts of Supabase’s library have one version: the socket takes the sign-in of the other', () => {
  const { dependencies } = JSON.parse(textOf('package.json')) as {
    dependencies: Record<string, string>
  }
  expect(dependencies['@supabase/realtime-js']).toBe(dependencies['@supabase/supabase-js'])
})

import { readFileSync } from 'node:fs'
import { expect, test } from 'vitest'

import { schemaFile, schemaOf } from '../../supabase/local/schema'
import { engines } from '../support/engines'

test('supabase/schema.sql is what the migrations make (else: npm run schema)', async () => {
  const pglite = engines.find(({ name }) => name === 'PGlite')
  if (!pglite) throw new Error('PGlite is not among the engines.')
  const database = await pglite.open()

  const made = await schemaOf((sql) => database.asOwner(sql))
  await database.close()

  expect(readFileSync(schemaFile, 'utf8')).toBe(made)
})

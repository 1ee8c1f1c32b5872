import { expect, test } from 'vitest'

import { engines } from '../support/engines'
import { schemaOf } from '../support/schema'

// `npm run schema` is this test with --update: it writes the file.
test('supabase/schema.sql is what the migrations make', async () => {
  const pglite = engines.find(({ name }) => name === 'PGlite')
  if (!pglite) throw new Error('PGlite is not among the engines.')
  const database = await pglite.open()

  const made = await schemaOf((sql) => database.asOwner(sql))
  await database.close()

  await expect(made).toMatchFileSnapshot('../../supabase/schema.sql')
})

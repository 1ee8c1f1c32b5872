/** A whole host in memory with a page that says where its backend is, as every page does. */

import { randomBytes } from 'node:crypto'

import { openTestEngine } from '../../../supabase/local/engine/memory'
import { createHost } from '../../../supabase/local/host'
import { makeTokens } from '../../../supabase/local/http/tokens'
import { readMigrations } from '../../../supabase/local/keep/migrate'
import { templateOf } from '../../support/template'

export async function openHosted() {
  const engine = await openTestEngine(await templateOf(readMigrations()))
  const tokens = await makeTokens(randomBytes(32))
  const address = JSON.stringify({ url: null, anonKey: tokens.anonKey })
  const host = await createHost({
    engine,
    tokens,
    log: () => {},
    pages: (_, response) =>
      void response.end(`<script type="application/json" id="rowcall-backend">${address}</script>`),
  })
  const port = await host.listen(0, '127.0.0.1')
  return {
    engine,
    origin: `http://127.0.0.1:${port}`,
    close: async () => {
      await host.close()
      await engine.close()
    },
  }
}

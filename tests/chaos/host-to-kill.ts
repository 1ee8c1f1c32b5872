/** A process of its own for the tests: a host on the data directory it is given. Prints its port. */
import { createHost } from '../../supabase/local/host'
import { makeTokens } from '../../supabase/local/http/tokens'
import { openData } from '../../supabase/local/keep/open-data'
import { fixtures } from '../supabase/local/fixtures'

const [, , dataFolder = '', secret = ''] = process.argv
const { engine } = await openData({ dataFolder, databaseUrl: null, migrations: fixtures })
const tokens = await makeTokens(Buffer.from(secret, 'hex'))
const host = await createHost({ engine, tokens, log: () => {} })
process.send?.(await host.listen(0, '127.0.0.1'))

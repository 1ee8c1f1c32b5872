/** A process of its own for the tests: opens the data directory it is given, and says why it cannot. */
import { openData } from '../../../supabase/local/keep/open-data'
import { fixtures } from './fixtures'

try {
  await openData({ dataFolder: process.argv[2] ?? '', databaseUrl: null, migrations: fixtures })
} catch (error) {
  process.stderr.write(error instanceof Error ? error.message : String(error))
  process.exit(1)
}
process.exit(0)

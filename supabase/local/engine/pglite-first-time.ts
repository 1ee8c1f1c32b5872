/**
 * Makes the empty database of a new data directory, as a process of its own that ends: the first
 * initialisation takes some 800 MB, which a server would otherwise hold for as long as it runs.
 */
import { PGlite } from '@electric-sql/pglite'
import { prepareRoles } from '../bootstrap/bootstrap'
import { DurableFiles } from './durable-files'
import { noSpace, startParameters } from './pglite-settings'

const folder = process.argv[2]
if (!folder) throw new Error('The folder to make the database in is missing.')

try {
  const pglite = await PGlite.create({ fs: new DurableFiles(folder), startParams: startParameters })
  await prepareRoles((sql) => pglite.exec(sql))
  await pglite.close()
  process.exit(0)
} catch (error) {
  process.exit((error as { errno?: unknown }).errno === noSpace ? noSpace : 1)
}

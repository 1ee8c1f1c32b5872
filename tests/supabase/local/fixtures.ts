import { fileURLToPath } from 'node:url'
import { readMigrations } from '../../../supabase/local/keep/migrate'

/** Migrations of a made-up schema, so that these tests are about the host alone. */
export const fixtures = readMigrations(fileURLToPath(new URL('./fixtures', import.meta.url)))

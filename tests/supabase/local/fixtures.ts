import { fileURLToPath } from 'node:url'
import { readMigrations } from '../../../supabase/local/keep/migrate'

/** Migrations of a made-up schema, so that these tests are about the host alone. */
export const fixtures = readMigrations(fileURLToPath(new URL('./fixtures', import.meta.url)))

/** The first database of a file is made from nothing, and other tests run beside it. */
export const hookMs = 60_000

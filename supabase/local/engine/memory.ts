/** PGlite in memory, for tests: the same roles and owner as on disk, and nothing is kept. */
import { PGlite } from '@electric-sql/pglite'
import { prepareRoles, prepareSchemas } from '../bootstrap/bootstrap'
import { applyMigrations, type Migration } from '../keep/migrate'
import { asSqlError, type Engine, owner, type Row, type Value } from './engine'

/** The files of a database with the migrations in it, to be opened many times. */
export async function makeTemplate(migrations: readonly Migration[]): Promise<Blob> {
  const pglite = await PGlite.create()
  await prepareRoles((sql) => pglite.exec(sql))
  await pglite.exec(`set session authorization ${owner}`)
  await prepareSchemas((sql) => pglite.exec(sql))
  await applyMigrations({ script: async (sql) => void (await pglite.exec(sql)) }, migrations)
  const template = await pglite.dumpDataDir('none')
  await pglite.close()
  return template
}

export async function openTestEngine(template: Blob): Promise<Engine> {
  const pglite = await PGlite.create({ loadDataDir: template })
  await pglite.exec(`set session authorization ${owner}`)
  return {
    name: 'PGlite',
    query: async <T extends Row>(sql: string, values: readonly Value[] = []) => {
      try {
        return (await pglite.query<T>(sql, [...values])).rows
      } catch (error) {
        throw asSqlError(error)
      }
    },
    script: async (sql) => {
      try {
        await pglite.exec(sql)
      } catch (error) {
        throw asSqlError(error)
      }
    },
    transaction: (kind, work) =>
      pglite.transaction(async (transaction) => {
        await transaction.exec(
          `set transaction ${kind}${kind === 'read only' ? ' isolation level repeatable read' : ''}`
        )
        return work(
          async <T extends Row>(sql: string, values: readonly Value[] = []) =>
            (await transaction.query<T>(sql, [...values])).rows
        )
      }),
    listen: async (channel, onPayload) => void (await pglite.listen(channel, onPayload)),
    vacuum: async () => {},
    close: () => pglite.close(),
  }
}

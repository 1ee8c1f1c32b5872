/**
 * Runs calls on the database. PGlite has one connection: calls that wait for it go together in one
 * transaction, each in a part of its own, so that fifty answers cost one trip to the disk and not fifty.
 */
import { type Engine, SqlError } from '../engine/engine'

export type Call = {
  claims: Record<string, unknown>
  role: string
  /** One statement that reads its arguments from `$1` and gives one text. */
  sql: string
  values: Record<string, unknown>
}

/** @throws SqlError what the call raised, whatever became of the others. */
export type RunCall = (call: Call) => Promise<string | null>

const mostTogether = 64

export function callsOn(engine: Engine): RunCall {
  return engine.name === 'PGlite' ? together(engine) : (call) => alone(engine, call)
}

async function alone(engine: Engine, { claims, role, sql, values }: Call): Promise<string | null> {
  const [row] = await engine.query<{ answer: string | null }>(
    'select local_host.call($1, $2, $3, $4::jsonb) as answer',
    [JSON.stringify(claims), role, sql, JSON.stringify(values)]
  )
  return row?.answer ?? null
}

type Waiting = {
  call: Call
  resolve: (answer: string | null) => void
  reject: (error: unknown) => void
}

function together(engine: Engine): RunCall {
  const waiting: Waiting[] = []
  let isRunning = false

  async function run(): Promise<void> {
    isRunning = true
    while (waiting.length > 0) {
      const batch = waiting.splice(0, mostTogether)
      try {
        const outcomes = await outcomesOf(engine, batch)
        batch.forEach(({ resolve, reject }, place) => {
          const outcome = outcomes[place]
          if (outcome === undefined)
            reject(new Error('The database left a call without an answer.'))
          else if (outcome.code === null) resolve(outcome.answer)
          else reject(errorOf(outcome))
        })
      } catch (error) {
        // Nothing of the batch is committed: all of them hear it and send again.
        for (const { reject } of batch) reject(error)
      }
    }
    isRunning = false
  }

  return (call) =>
    new Promise((resolve, reject) => {
      waiting.push({ call, resolve, reject })
      if (!isRunning) void run()
    })
}

type Outcome = {
  answer: string | null
  code: string | null
  message: string
  detail: string | null
  hint: string | null
}

function outcomesOf(engine: Engine, batch: readonly Waiting[]): Promise<Outcome[]> {
  const calls = batch.map(({ call: { claims, role, sql, values } }) => ({
    claims: JSON.stringify(claims),
    role,
    sql,
    values: JSON.stringify(values),
  }))
  return engine.query<Outcome>('select * from local_host.calls($1::jsonb)', [JSON.stringify(calls)])
}

function errorOf({ code, message, detail, hint }: Outcome): SqlError {
  return new SqlError(code ?? '', message, detail || null, hint || null)
}

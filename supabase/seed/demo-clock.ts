/**
 * Loading the demo takes some seconds; to whoever opens it, it is a morning with a winter behind it. The referee's
 * clock cannot be told what time it is, so the owner of the database says afterwards when things happened.
 */

import type { Engine } from '../local/engine/engine'

type Told = { n: number; at: string; kind: string; commandId: string }

/** When each command was meant, by its id. */
export async function setTimes(engine: Engine, meant: ReadonlyMap<string, Date>): Promise<void> {
  const events = await eventsAfter(engine, 0)
  await move(
    engine,
    events.flatMap(({ at, commandId }) => {
      const time = meant.get(commandId)
      return time ? [[at, time]] : []
    })
  )
}

export type Evening = { from: Date; to: Date }

/** All that happened so far, evenly. */
export async function spreadOverEvening(engine: Engine, { from, to }: Evening): Promise<void> {
  const events = await eventsAfter(engine, 0)
  const stepMs = (to.getTime() - from.getTime()) / events.length
  await move(
    engine,
    events.map(({ at }, index) => [at, new Date(from.getTime() + index * stepMs)])
  )
}

export type Morning = {
  /** The number of the last event that is not of this morning. */
  after: number
  startsAt: Date
  now: Date
}

/** In order and whole: what happened first stays first, and what happened at once still does. */
export async function spreadOverMorning(engine: Engine, morning: Morning): Promise<void> {
  await move(engine, spread(await eventsAfter(engine, morning.after), morning))
}

export async function lastEvent(engine: Engine): Promise<number> {
  const [last] = await engine.query<{ n: number }>('select max(n)::integer as n from public.events')
  return last?.n ?? 0
}

function eventsAfter(engine: Engine, n: number): Promise<Told[]> {
  return engine.query<Told>(
    `select n::integer, at::text, kind, command_id as "commandId" from public.events where n > $1 order by n`,
    [n]
  )
}

/** Whatever has the one time gets the other: a row that an event wrote has the event's. */
async function move(engine: Engine, times: readonly (readonly [was: string, is: Date])[]) {
  const moved = JSON.stringify(
    Object.fromEntries(times.map(([was, is]) => [was, is.toISOString()]))
  )
  const columns = await engine.query<{ table: string; column: string }>(
    `select table_name as table, column_name as column from information_schema.columns
     where table_schema = 'public' and data_type = 'timestamp with time zone'`
  )
  for (const { table, column } of columns) {
    await engine.query(
      `update public."${table}" row set "${column}" = time.value::timestamptz
       from jsonb_each_text($1::jsonb) time where row."${column}" = time.key::timestamptz`,
      [moved]
    )
  }
  await engine.query(
    `update public.visits v set seconds = extract(epoch from v.at - c.opened_at)::integer
     from public.claims c where c.id = v.claim_id`
  )
}

/** How long it was since the event before, as parts of the morning. A finished tree is followed by the next claim. */
const partsBefore: Record<string, number> = {
  tree_finished: 5,
  tree_released: 5,
  tree_claimed: 1,
  shift_opened: 0,
}
const usualParts = 1.5

function spread(events: readonly Told[], { startsAt, now }: Morning): [string, Date][] {
  const opened = events.findIndex(({ kind }) => kind === 'shift_opened')
  let parts = 0
  const reached = events.map(({ kind }, index) => {
    parts += index < opened ? usualParts : (partsBefore[kind] ?? usualParts)
    return parts
  })
  const from = reached[opened] ?? 0
  const partMs = (now.getTime() - startsAt.getTime()) / (parts - from)
  return events.map(({ at }, index) => [
    at,
    new Date(startsAt.getTime() + ((reached[index] ?? 0) - from) * partMs),
  ])
}

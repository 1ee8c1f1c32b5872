/**
 * Loading the demo takes some seconds; to whoever opens it, it is a morning. The referee's clock cannot be
 * told what time it is, so the owner of the database spreads what was just written over the shift.
 */

import type { Engine } from '../local/engine/engine'

export type Morning = { startsAt: Date; now: Date }

type Told = { at: string; kind: string }

/** In order and whole: what happened first stays first, and what happened at once still does. */
export async function spreadOverMorning(engine: Engine, morning: Morning): Promise<void> {
  const events = await engine.query<Told>('select at::text, kind from public.events order by n')
  const times = JSON.stringify(Object.fromEntries(spread(events, morning)))
  const columns = await engine.query<{ table: string; column: string }>(
    `select table_name as table, column_name as column from information_schema.columns
     where table_schema = 'public' and data_type = 'timestamp with time zone'`
  )
  for (const { table, column } of columns) {
    await engine.query(
      `update public."${table}" set "${column}" = ($1::jsonb ->> "${column}"::text)::timestamptz
       where $1::jsonb ? "${column}"::text`,
      [times]
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

function spread(events: readonly Told[], { startsAt, now }: Morning): [string, string][] {
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
    new Date(startsAt.getTime() + ((reached[index] ?? 0) - from) * partMs).toISOString(),
  ])
}

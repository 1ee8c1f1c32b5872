/** Calls that arrive in the same instant. */

import type { TestDatabase } from './engines'
import type { Reply } from './orchard'

/**
 * The barrier: while somebody else has the orchard's lock all of these come to wait for it, each on
 * a connection of its own, and all are let go at once. (PGlite has one connection: its queue decides.)
 */
export async function together(
  database: TestDatabase,
  orchardId: string,
  calls: [() => Promise<Reply>, () => Promise<Reply>]
): Promise<[Reply, Reply]> {
  const barrier = database.asOwner(
    `with locked as (select 1 from public.orchard_heads where orchard_id = $1 for no key update)
     select pg_sleep(0.015) from locked`,
    [orchardId]
  )
  const replies = await Promise.all([calls[0](), calls[1]()])
  await barrier
  return replies
}

/** Either first, in turn, so that both orders are seen; the answers in the order of the arguments. */
export async function inEitherOrder(
  database: TestDatabase,
  orchardId: string,
  round: number,
  [one, other]: [() => Promise<Reply>, () => Promise<Reply>]
): Promise<[Reply, Reply]> {
  if (round % 2 === 0) return together(database, orchardId, [one, other])
  const [second, first] = await together(database, orchardId, [other, one])
  return [first, second]
}

/** What HTTP adds to the SQL of a claim, and how many claims a second fifty people get. */

import { createHost } from '../../supabase/local/host'
import { rpcOf } from '../../supabase/local/http/rpc'
import { makeTokens } from '../../supabase/local/http/tokens'
import { openData } from '../../supabase/local/keep/open-data'
import { hashOfCode, newCode } from '../../supabase/seed/codes'
import { atLeast, atMost, type Figure, ms, noted, share } from './figures'
import { foundOrchard, readyPeople } from './orchard'
import { Phone } from './phone'

const rounds = 300

/** One caller; the same claim in turn straight to the database and over HTTP, in one process. */
export async function benchWhatHttpAdds(dataFolder: string): Promise<Figure[]> {
  const { engine, close } = await openData({ dataFolder, databaseUrl: null })
  const tokens = await makeTokens(Buffer.alloc(32, 7))
  const host = await createHost({ engine, tokens, log: () => {} })
  try {
    const address = `http://127.0.0.1:${await host.listen(0, '127.0.0.1')}`
    const code = newCode()
    await engine.query('select private.make_setup_code($1)', [hashOfCode(code)])
    const orchard = await foundOrchard(await Phone.signUp(address, tokens.anonKey), code, 400)
    // One after the other, but in turn: a single login would reach the host's limit of calls.
    const people = await readyPeople(orchard, 6)
    const rpc = rpcOf(engine)
    const times = { sql: [] as number[], http: [] as number[] }
    for (let round = 0; round < rounds; round++) {
      const person = people[round % people.length]
      if (!person) throw new Error('Nobody is ready.')
      const claims = claimsIn(person.token)
      for (const way of ['sql', 'http'] as const) {
        const values = {
          p_orchard: person.orchard,
          p_person: person.person,
          p_command: crypto.randomUUID(),
          p_tree: 1 + (round % 400),
        }
        const startedAt = performance.now()
        if (way === 'sql') await rpc({ role: 'authenticated', claims }, 'claim_tree', values)
        else await person.call('claim_tree', values)
        times[way].push(performance.now() - startedAt)
        await person.must('release_tree', { p_tree: values.p_tree, p_claim: values.p_command })
      }
    }
    const [sql, http] = [share(times.sql, 0.5), share(times.http, 0.5)]
    return [
      noted('a claim, SQL alone, p50', ms(sql)),
      noted('a claim over HTTP, p50', ms(http)),
      atMost('what HTTP adds, p50', http - sql, 2.5, ms),
    ]
  } finally {
    await host.close()
    await close()
  }
}

function claimsIn(token: string): Record<string, unknown> {
  return JSON.parse(Buffer.from(token.split('.')[1] ?? '', 'base64url').toString())
}

/** Fifty people claim fifty trees at once, again and again; giving back is not counted. */
export async function benchClaims(people: readonly Phone[]): Promise<Figure[]> {
  let claimingMs = 0
  const answerMs: number[] = []
  const [warmUp, times] = [5, 20]
  for (let time = -warmUp; time < times; time++) {
    const startedAt = performance.now()
    // Just started, the engine still compiles what it runs often; what a day is like is counted.
    if (time === 0) {
      claimingMs = 0
      answerMs.length = 0
    }
    const claims = await Promise.all(
      people.map(async (person, index) => {
        // Far enough apart that nobody is in anybody's way.
        const tree = 1 + index * 100 + (time + warmUp) * 3
        const { id } = await person.must('claim_tree', { p_tree: tree })
        answerMs.push(performance.now() - startedAt)
        return { person, tree, id }
      })
    )
    claimingMs += performance.now() - startedAt
    await Promise.all(
      claims.map(({ person, tree, id }) =>
        person.must('release_tree', { p_tree: tree, p_claim: id })
      )
    )
  }
  const perSecond = (people.length * times) / (claimingMs / 1000)
  return [
    atLeast(`claims a second at ${people.length} callers`, perSecond, 500, (value) =>
      value.toFixed(0)
    ),
    noted('an answer among fifty, p50', ms(share(answerMs, 0.5))),
  ]
}

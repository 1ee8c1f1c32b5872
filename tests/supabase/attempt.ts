/** Calls a door as somebody, looks at what it did, and takes it back: thousands of calls on one orchard. */

import { statusOf } from '../../supabase/local/http/sql-status'
import type { TestDatabase } from '../support/engines'
import type { Outcome } from './door'

export type Attempt = {
  /** A user, or null for somebody not signed in. */
  user: string | null
  args: Record<string, unknown>
}

export type Attempted = {
  outcome: Outcome
  /** Table → the sum of its rows' hashes after the call, which takes a third of the time of writing them out. */
  tables: Record<string, string>
}

export type Signature = { names: string[]; types: string[]; isRead: boolean }

export async function prepareAttempts(database: TestDatabase): Promise<void> {
  const tables = await database.asOwner<{ name: string }>(
    `select relname as name from pg_class where relnamespace = 'public'::regnamespace and relkind = 'r' order by 1`
  )
  const hashes = tables.map(
    ({ name }) => `'${name}', (select sum(hash_record_extended(t, 0))::text from public.${name} t)`
  )
  await database.engine.script(`
    create schema proof;
    create function proof.tables() returns jsonb language plpgsql stable as $$
    begin return jsonb_build_object(${hashes.slice(0, 30).join(', ')})
      || jsonb_build_object(${hashes.slice(30).join(', ')}); end $$;
    ${attempt}`)
}

/** What is in the tables now. */
export async function tablesOf(database: TestDatabase): Promise<Record<string, string>> {
  const [row] = await database.asOwner<{ tables: Record<string, string> }>(
    'select proof.tables() as tables'
  )
  return row?.tables ?? {}
}

export async function signaturesOf(database: TestDatabase): Promise<Map<string, Signature>> {
  const rows = await database.asOwner<{ door: string } & Signature>(`
    select proname as door, coalesce(proargnames, '{}') as names, provolatile <> 'v' as "isRead",
      array(select format_type(t, null) from unnest(proargtypes) with ordinality u (t, i) order by i) as types
    from pg_proc where pronamespace = 'public'::regnamespace`)
  return new Map(rows.map(({ door, ...signature }) => [door, signature]))
}

export async function attemptAll(
  database: TestDatabase,
  door: string,
  { names, types }: Signature,
  attempts: readonly Attempt[]
): Promise<Attempted[]> {
  const calls = attempts.map(({ user, args }) => {
    const given = names.filter((name) => Object.hasOwn(args, name))
    const columns = given.map((name) => `${name} ${types[names.indexOf(name)]}`)
    const call = `public.${door}(${given.map((name) => `${name} => a.${name}`).join(', ')})`
    return {
      user,
      role: user === null ? 'anon' : 'authenticated',
      args,
      call: `select to_jsonb(${call}) from jsonb_to_record($1) as a (${[...columns, '_ int'].join(', ')})`,
    }
  })
  const rows = await database.asOwner<{ result: Result; role: string }>(
    `select proof.attempt(c."user", c.role, c.call, c.args) as result, c.role
     from jsonb_to_recordset($1::jsonb) as c ("user" uuid, role text, call text, args jsonb)`,
    [JSON.stringify(calls)]
  )
  return rows.map(({ result, role }) => ({
    outcome: outcomeOf(result, role),
    tables: result.tables,
  }))
}

type Result = {
  answer?: { refused?: { code: string }[] } | null
  error?: string
  detail?: string
  message?: string
  tables: Record<string, string>
}

function outcomeOf({ answer, error, detail, message }: Result, role: string): Outcome {
  if (error !== undefined) {
    const status = statusOf(error, role)
    // Without a code of ours it is the wall itself, or a fault that should be seen.
    return detail ? `${status} ${detail}` : status === 401 ? '401' : `${status} ${message}`
  }
  const refused = answer?.refused
  if (!refused) return 'ok'
  return `refused: ${refused
    .map(({ code }) => code)
    .sort()
    .join(', ')}`
}

const attempt = `
  create function proof.attempt(p_user uuid, p_role text, p_call text, p_args jsonb) returns jsonb
  language plpgsql volatile as $$
  declare
    v_owner text := current_user;
    v_answer jsonb;
    v_code text;
    v_message text;
    v_detail text;
  begin
    perform set_config('request.jwt.claims', jsonb_build_object('sub', p_user, 'role', p_role)::text, true);
    perform set_config('role', p_role, true);
    execute p_call into v_answer using p_args;
    perform set_config('role', v_owner, true);
    raise exception using errcode = 'UNDO1',
      message = jsonb_build_object('answer', v_answer, 'tables', proof.tables())::text;
  exception when others then
    -- The role and all that was written are as before.
    get stacked diagnostics v_code = returned_sqlstate, v_message = message_text, v_detail = pg_exception_detail;
    if v_code = 'UNDO1' then return v_message::jsonb; end if;
    return jsonb_build_object('error', v_code, 'message', v_message, 'detail', v_detail, 'tables', proof.tables());
  end $$;`

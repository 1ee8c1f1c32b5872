/** Calls one function of schema public by name with named arguments, as the person who asks. */
import type { Engine } from '../engine/engine'
import { type Answer, callError } from './answers'
import { callsOn } from './calls'
import { answerOfError } from './sql-status'

export type Caller = { role: 'anon' | 'authenticated'; claims: Record<string, unknown> }

type Signature = {
  names: readonly string[]
  types: readonly string[]
  required: number
  returns: 'nothing' | 'one' | 'set'
}

export type Rpc = (caller: Caller, name: string, values: Record<string, unknown>) => Promise<Answer>

export function rpcOf(engine: Engine): Rpc {
  const run = callsOn(engine)
  const known = new Map<string, readonly Signature[]>()

  return async (caller, name, values) => {
    try {
      const signature = pick(known.get(name) ?? (await learn(engine, known, name)), values)
      if (!signature) return notFound(name, values)
      const answer = await run({ ...caller, sql: statementOf(name, signature, values), values })
      if (signature.returns === 'nothing') return { status: 204 }
      return { status: 200, body: answer ?? 'null' }
    } catch (error) {
      return answerOfError(error, caller.role)
    }
  }
}

async function learn(engine: Engine, known: Map<string, readonly Signature[]>, name: string) {
  const rows = await engine.query<{
    names: string[] | null
    types: string[]
    defaults: number
    returns: Signature['returns']
  }>(
    `select p.proargnames[:p.pronargs] as names,
            array(select format_type(t, null) from unnest(p.proargtypes) with ordinality u(t, i) order by i) as types,
            p.pronargdefaults as defaults,
            case when p.prorettype = 'void'::regtype then 'nothing' when p.proretset then 'set' else 'one' end as returns
     from pg_catalog.pg_proc p
     where p.pronamespace = 'public'::regnamespace and p.prokind = 'f' and p.proname = $1`,
    [name]
  )
  const signatures = rows.map(({ names, types, defaults, returns }) => ({
    names: names ?? [],
    types,
    required: types.length - defaults,
    returns,
  }))
  // Unknown names are not kept: anybody can invent any number of them.
  if (signatures.length > 0) known.set(name, signatures)
  return signatures
}

function pick(signatures: readonly Signature[], values: Record<string, unknown>) {
  const given = Object.keys(values)
  return signatures.find(
    ({ names, types, required }) =>
      names.length === types.length &&
      given.every((name) => names.includes(name)) &&
      names.slice(0, required).every((name) => given.includes(name))
  )
}

/** Only names that the catalogue confirmed reach the text; the values are bound. */
function statementOf(name: string, signature: Signature, values: Record<string, unknown>): string {
  const given = signature.names
    .map((argument, place) => ({ argument: quoted(argument), type: signature.types[place] ?? '' }))
    .filter((_, place) => Object.hasOwn(values, signature.names[place] ?? ''))
  const passed = given.map(({ argument }) => `${argument} => a.${argument}`).join(', ')
  const call = `public.${quoted(name)}(${passed})`
  const from = given.length === 0 ? '' : `jsonb_to_record($1) as a(${columnsOf(given)})`

  switch (signature.returns) {
    case 'nothing':
      return `select null::text from (select ${call}${from && ` from ${from}`}) nothing`
    case 'one':
      return `select to_json(${call})::text${from && ` from ${from}`}`
    case 'set':
      return `select coalesce(json_agg(r), '[]')::text from ${from && `${from}, lateral `}${call} r`
  }
}

function columnsOf(given: readonly { argument: string; type: string }[]): string {
  return given.map(({ argument, type }) => `${argument} ${type}`).join(', ')
}

function quoted(name: string): string {
  return `"${name.replaceAll('"', '""')}"`
}

function notFound(name: string, values: Record<string, unknown>): Answer {
  return callError(
    404,
    'PGRST202',
    `Could not find the function public.${name}(${Object.keys(values).sort().join(', ')}) in the schema cache`
  )
}

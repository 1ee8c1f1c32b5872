/** Which call a request is, who makes it and whether they may make one more. */
import type { IncomingMessage } from 'node:http'
import type { Engine } from '../engine/engine'
import { type Answer, authError, busy, callError } from './answers'
import { authOf } from './auth'
import { largestBodyBytes, largestOrchardBytes, readBody } from './body'
import { health } from './health'
import { Buckets, type Limit } from './limits'
import { type Caller, rpcOf } from './rpc'
import type { Tokens } from './tokens'

/** A whole crew arrives at once behind one address: bounds are per login, and for sign-ups the host's. */
export type Limits = { calls: Limit; photos: Limit; callsOfStrangers: Limit; signUps: Limit }

const usualLimits: Limits = {
  calls: { burst: 400, perSecond: 40 },
  // A day without signal at once; more, and one phone would fill the disk in an hour.
  photos: { burst: 300, perSecond: 0.05 },
  callsOfStrangers: { burst: 400, perSecond: 100 },
  signUps: { burst: 600, perSecond: 20 },
}
const mostAtOnce = 1_000
/** These carry trees by the thousand, or an archive in parts. */
const takesWholeOrchards = ['bring_in_trees', 'put_archive_part']
const mostLargeAtOnce = 4

export type Handled = { answer: Answer; route: string; login?: string }
type Routes = (request: IncomingMessage, path: string) => Promise<Handled> | null

/** Null when the request is for the pages. */
export function routesOf(engine: Engine, tokens: Tokens, limits = usualLimits): Routes {
  const auth = authOf(engine, tokens)
  const rpc = rpcOf(engine)
  const calls = new Buckets(limits.calls)
  const photos = new Buckets(limits.photos)
  const strangers = new Buckets(limits.callsOfStrangers)
  const signUps = new Buckets(limits.signUps)
  let atOnce = 0
  let largeAtOnce = 0

  const routes: Routes = (request, path) => {
    if (path === '/health') return asRoute('health', health(engine))
    if (path.startsWith('/auth/v1/'))
      return asRoute(
        path,
        bounded(() => auths(request, path))
      )
    const [, name] = path.match(/^\/rest\/v1\/rpc\/([a-z_][a-z0-9_]{0,62})$/) ?? []
    if (name !== undefined) return call(request, name)
    if (!/^\/(rest|realtime|storage|functions)\/v1(\/|$)/.test(path)) return null
    return asRoute('unknown', Promise.resolve(callError(404, 'PGRST125', 'There is nothing here.')))
  }
  return routes

  async function call(request: IncomingMessage, name: string): Promise<Handled> {
    const route = `rpc/${name}`
    const caller = await callerOf(request)
    if (caller.state === 'refused') return { route, answer: caller.answer }
    const { role, claims } = caller.caller
    const login = typeof claims.sub === 'string' ? { login: claims.sub } : {}
    const isAllowed = login.login ? mayCall(login.login, name) : strangers.take('')
    if (!isAllowed) {
      const answer = callError(429, 'too_many_calls', 'Too many calls. Wait a few seconds.')
      return { route, answer: { ...answer, headers: { 'retry-after': '5' } }, ...login }
    }
    const answer = await bounded(async () => {
      if (request.method !== 'POST') return callError(405, 'PGRST101', 'Calls are made by POST.')
      const isLarge = role === 'authenticated' && takesWholeOrchards.includes(name)
      if (!isLarge) return answerWithin(largestBodyBytes)
      // Anybody can sign in, and memory is not for everybody's large bodies at once.
      if (largeAtOnce >= mostLargeAtOnce) return busy()
      largeAtOnce += 1
      return answerWithin(largestOrchardBytes).finally(() => {
        largeAtOnce -= 1
      })
    })

    return { route, answer, ...login }

    async function answerWithin(mostBytes: number): Promise<Answer> {
      const read = await readBody(request, mostBytes)
      return read.state === 'refused' ? read.answer : rpc({ role, claims }, name, read.body)
    }
  }

  function mayCall(login: string, name: string): boolean {
    return calls.take(login) && (name !== 'add_photo' || photos.take(login))
  }

  async function auths(request: IncomingMessage, path: string): Promise<Answer> {
    const url = new URL(request.url ?? '', 'http://host')
    const what = `${request.method} ${path.slice('/auth/v1/'.length)}`
    switch (what) {
      case 'POST signup': {
        if (!isOurKey(request)) return noKey()
        const read = await readBody(request)
        if (read.state === 'refused') return read.answer
        return signUps.take('') ? auth.signUp(read.body) : busy()
      }
      case 'POST token': {
        // Without asking for the key: a page opened before a move to another machine has the old one,
        // and a refusal here would cost its owner their identity.
        const read = await readBody(request)
        if (read.state === 'refused') return read.answer
        return url.searchParams.get('grant_type') === 'refresh_token'
          ? auth.refresh(read.body)
          : authError(400, 'unsupported_grant_type', 'Only refresh_token is known here.')
      }
      case 'GET user':
      case 'POST logout': {
        const verified = await tokens.verifyAccess(bearerOf(request) ?? '')
        if (verified.state !== 'valid')
          return authError(403, 'bad_jwt', 'The sign-in is not valid.')
        return what === 'GET user'
          ? auth.user(verified.claims)
          : auth.logout(verified.claims, url.searchParams.get('scope') ?? 'global')
      }
      default:
        return authError(404, 'not_found', 'There is nothing here.')
    }
  }

  type Identified = { state: 'known'; caller: Caller } | { state: 'refused'; answer: Answer }

  async function callerOf(request: IncomingMessage): Promise<Identified> {
    const bearer = bearerOf(request)
    if (bearer === null || bearer === tokens.anonKey) {
      if (!isOurKey(request)) return { state: 'refused', answer: noKey() }
      return { state: 'known', caller: { role: 'anon', claims: { role: 'anon' } } }
    }
    const verified = await tokens.verifyAccess(bearer)
    switch (verified.state) {
      case 'valid':
        return { state: 'known', caller: { role: 'authenticated', claims: verified.claims } }
      case 'expired':
        return { state: 'refused', answer: callError(401, 'PGRST303', 'JWT expired') }
      case 'invalid':
        return { state: 'refused', answer: callError(401, 'PGRST301', 'The sign-in is not valid.') }
    }
  }

  function isOurKey(request: IncomingMessage): boolean {
    return request.headers.apikey === tokens.anonKey
  }

  /** Busy is 503 everywhere: to a 4xx on refresh the client answers by dropping the session. */
  async function bounded(answer: () => Promise<Answer>): Promise<Answer> {
    if (atOnce >= mostAtOnce) return busy()
    atOnce += 1
    try {
      return await answer()
    } finally {
      atOnce -= 1
    }
  }
}

async function asRoute(route: string, answer: Promise<Answer>): Promise<Handled> {
  return { route, answer: await answer }
}

function bearerOf(request: IncomingMessage): string | null {
  return request.headers.authorization?.match(/^Bearer (\S+)$/i)?.[1] ?? null
}

function noKey(): Answer {
  return callError(401, 'no_api_key', 'The key of this host is missing or old. Reload the page.')
}

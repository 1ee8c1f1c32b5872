/** The four calls of Supabase's auth that an anonymous person's phone makes. */
import { randomBytes } from 'node:crypto'
import { z } from 'zod'
import type { Engine, Row } from '../engine/engine'
import { type Answer, authError, busy } from './answers'
import { hashOf, type PersonClaims, type Tokens } from './tokens'

type Who = { user_id: string; session_id: string; created_at: string; last_sign_in_at: string }

const refreshBody = z.object({ refresh_token: z.string().min(1).max(200) })

export function authOf(engine: Engine, tokens: Tokens) {
  return {
    async signUp(body: Row): Promise<Answer> {
      if ('email' in body || 'phone' in body || 'password' in body) {
        return authError(
          422,
          'signup_disabled',
          'People join by a link, without e-mail or password.'
        )
      }
      const refreshToken = randomBytes(24).toString('base64url')
      const [who] = await engine.query<Who>(
        `with person as (insert into auth.users default values returning *),
              session as (insert into auth.sessions (user_id) select id from person returning *),
              token as (insert into auth.refresh_tokens (token_hash, session_id)
                        select $1, id from session)
         select ${whoColumns} from person u cross join session s`,
        [hashOf(refreshToken)]
      )
      return who ? await sessionAnswer(tokens, who, refreshToken) : busy()
    },

    async refresh(body: Row): Promise<Answer> {
      const parsed = refreshBody.safeParse(body)
      if (!parsed.success)
        return authError(400, 'validation_failed', 'The refresh token is missing.')
      const next = tokens.refreshAfter(parsed.data.refresh_token)
      const [row] = await engine.query<Who & { outcome: 'unknown' | 'refreshed' | 'reused' }>(
        `select s.outcome, s.session_id, s.user_id, ${userTimes}
         from local_host.refresh($1, $2) s left join auth.users u on u.id = s.user_id`,
        [hashOf(parsed.data.refresh_token), hashOf(next)]
      )
      switch (row?.outcome) {
        case 'refreshed':
          return sessionAnswer(tokens, row, next)
        case 'reused':
          return authError(
            400,
            'refresh_token_already_used',
            'Invalid Refresh Token: Already Used. The session has been ended.'
          )
        case 'unknown':
        case undefined:
          return authError(400, 'refresh_token_not_found', 'Invalid Refresh Token: Not Found')
      }
    },

    async user({ sub, session_id }: PersonClaims): Promise<Answer> {
      const [who] = await engine.query<Who>(
        `select ${whoColumns} from auth.sessions s join auth.users u on u.id = s.user_id
         where s.id = $1 and u.id = $2`,
        [session_id, sub]
      )
      return who
        ? { status: 200, body: userOf(who) }
        : authError(403, 'session_not_found', 'The session has been ended.')
    },

    async logout({ sub, session_id }: PersonClaims, scope: string): Promise<Answer> {
      await engine.query(
        `delete from auth.sessions where user_id = $1 and case $3
           when 'local' then id = $2 when 'others' then id <> $2 else true end`,
        [sub, session_id, scope]
      )
      return { status: 204 }
    },
  }
}

const userTimes = `to_json(u.created_at) #>> '{}' as created_at, to_json(u.last_sign_in_at) #>> '{}' as last_sign_in_at`
const whoColumns = `u.id as user_id, s.id as session_id, ${userTimes}`

/** Without expires_at: the phone's clock may be hours off, so it counts from when it got the answer. */
async function sessionAnswer(tokens: Tokens, who: Who, refreshToken: string): Promise<Answer> {
  return {
    status: 200,
    body: {
      access_token: await tokens.signAccess({ userId: who.user_id, sessionId: who.session_id }),
      token_type: 'bearer',
      expires_in: tokens.accessSeconds,
      refresh_token: refreshToken,
      user: userOf(who),
    },
  }
}

function userOf(who: Who) {
  return {
    id: who.user_id,
    aud: 'authenticated',
    role: 'authenticated',
    email: '',
    phone: '',
    is_anonymous: true,
    app_metadata: {},
    user_metadata: {},
    identities: [],
    created_at: who.created_at,
    updated_at: who.last_sign_in_at,
    last_sign_in_at: who.last_sign_in_at,
  }
}

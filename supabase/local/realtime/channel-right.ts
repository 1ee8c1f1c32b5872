/** Whether somebody may hear a channel now, and until when. */
import type { Engine } from '../engine/engine'
import type { Tokens } from '../http/tokens'

export type Right = { state: 'granted'; expiresAt: number } | { state: 'refused'; reason: string }
export type RightOf = (token: unknown, topic: string) => Promise<Right>

export function rightsOf(engine: Engine, tokens: Tokens): RightOf {
  return async (token, topic) => {
    if (typeof token !== 'string') return refused(`${unauthorized}: ${topic}`)
    const verified = await tokens.verifyAccess(token)
    if (verified.state === 'expired') return refused('InvalidJWTToken: Token has expired')
    if (verified.state === 'invalid') return refused('InvalidJWTToken: Token is not valid')
    const [row] = await engine.query<{ may: boolean }>(
      `select local_host.may_join($1, 'authenticated', $2) as may`,
      [JSON.stringify(verified.claims), topic]
    )
    return row?.may
      ? { state: 'granted', expiresAt: verified.claims.exp * 1000 }
      : refused(`${unauthorized}: ${topic}`)
  }
}

const unauthorized = 'Unauthorized: You do not have permissions to read from this Channel topic'

function refused(reason: string): Right {
  return { state: 'refused', reason }
}

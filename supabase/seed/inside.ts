/** The referee from inside the host: the public functions behind the same wall, without a port. */

import { faultOf } from '@/lib/data/errors'

import type { Engine } from '../local/engine/engine'
import { rpcOf } from '../local/http/rpc'
import type { SignIn } from './referee'

export function signInInside(engine: Engine): SignIn {
  const rpc = rpcOf(engine)
  return async () => {
    const [user] = await engine.query<{ id: string }>(
      'insert into auth.users default values returning id'
    )
    const claims = {
      sub: user?.id,
      aud: 'authenticated',
      role: 'authenticated',
      is_anonymous: true,
    }
    return async ({ name, values }) => {
      const { status, body } = await rpc({ role: 'authenticated', claims }, name, values)
      const told: unknown = typeof body === 'string' ? JSON.parse(body) : body
      if (status < 300) return { ok: true, value: told }
      return { ok: false, ...faultOf({ status, ...(told as { details?: string }) }) }
    }
  }
}

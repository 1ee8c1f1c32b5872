/** Access tokens, the key of the app, and refresh tokens. */
import { createHash, createHmac, createSecretKey } from 'node:crypto'
import { errors, jwtVerify, SignJWT } from 'jose'
import { z } from 'zod'

const issuer = 'rowcall-local-host'
const audience = 'authenticated'

const personClaims = z.object({
  sub: z.uuid(),
  role: z.literal('authenticated'),
  session_id: z.uuid(),
  is_anonymous: z.boolean(),
  exp: z.number(),
})
export type PersonClaims = z.infer<typeof personClaims>

export type Verified =
  | { state: 'valid'; claims: PersonClaims }
  | { state: 'expired' }
  | { state: 'invalid' }

export type Tokens = {
  /** Says "this is the app" and grants nothing; the same at every start, as open pages keep it. */
  anonKey: string
  accessSeconds: number
  signAccess: (person: { userId: string; sessionId: string }) => Promise<string>
  verifyAccess: (token: string) => Promise<Verified>
  /**
   * The one token that follows this one. Since it can be worked out again, the same answer can be
   * given twice though only hashes are stored.
   */
  refreshAfter: (token: string) => string
}

export async function makeTokens(secret: Buffer, accessSeconds = 3600): Promise<Tokens> {
  const key = createSecretKey(derived(secret, 'access tokens'))
  const refreshKey = derived(secret, 'refresh tokens')
  const anonKey = await new SignJWT({ role: 'anon', iss: issuer })
    .setProtectedHeader({ alg: 'HS256', typ: 'JWT' })
    .sign(key)

  return {
    anonKey,
    accessSeconds,
    signAccess: ({ userId, sessionId }) =>
      new SignJWT({ role: 'authenticated', is_anonymous: true, session_id: sessionId })
        .setProtectedHeader({ alg: 'HS256', typ: 'JWT' })
        .setSubject(userId)
        .setAudience(audience)
        .setIssuer(issuer)
        .setIssuedAt()
        .setExpirationTime(Math.floor(Date.now() / 1000) + accessSeconds)
        .sign(key),
    verifyAccess: async (token) => {
      try {
        const { payload } = await jwtVerify(token, key, { algorithms: ['HS256'], audience, issuer })
        const claims = personClaims.safeParse(payload)
        return claims.success ? { state: 'valid', claims: claims.data } : { state: 'invalid' }
      } catch (error) {
        return { state: error instanceof errors.JWTExpired ? 'expired' : 'invalid' }
      }
    },
    refreshAfter: (token) =>
      createHmac('sha256', refreshKey).update(token).digest('base64url').slice(0, 32),
  }
}

export function hashOf(refreshToken: string): string {
  return createHash('sha256').update(refreshToken).digest('hex')
}

function derived(secret: Buffer, purpose: string): Buffer {
  return createHmac('sha256', secret).update(purpose).digest()
}

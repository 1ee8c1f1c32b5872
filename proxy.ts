/** Gives every page its content security policy, with a nonce of its own. */

import { type NextRequest, NextResponse } from 'next/server'

export function proxy(request: NextRequest): NextResponse {
  const nonce = btoa(crypto.randomUUID())
  const policy = policyWith(nonce)

  // Next.js reads the nonce from the request's policy, the root layout from x-nonce.
  const headers = new Headers(request.headers)
  headers.set('x-nonce', nonce)
  headers.set('content-security-policy', policy)

  const response = NextResponse.next({ request: { headers } })
  response.headers.set('content-security-policy', policy)
  return response
}

function policyWith(nonce: string): string {
  // Hot reload evaluates code and styles by itself; nothing of that is in a build.
  const isDevelopment = process.env.NODE_ENV === 'development'
  return [
    `default-src 'self'`,
    `script-src 'self' 'nonce-${nonce}' 'strict-dynamic'${isDevelopment ? ` 'unsafe-eval'` : ''}`,
    `style-src 'self' ${isDevelopment ? `'unsafe-inline'` : `'nonce-${nonce}'`}`,
    `connect-src 'self'${backendSources(process.env.ROWCALL_BACKEND_URL)}`,
    `worker-src 'self'`,
    `img-src 'self' data: blob:${originOf(process.env.ROWCALL_TILES)}`,
    `object-src 'none'`,
    `base-uri 'none'`,
    `form-action 'self'`,
    `frame-ancestors 'none'`,
  ].join('; ')
}

/** A backend elsewhere is spoken to over http and over sockets. */
function backendSources(url: string | undefined): string {
  if (!url) return ''
  const { origin } = new URL(url)
  return ` ${origin} ${origin.replace(/^http/, 'ws')}`
}

/** Pictures of the ground come from there and from nowhere else. */
function originOf(url: string | undefined): string {
  return url ? ` ${new URL(url).origin}` : ''
}

export const config = {
  matcher: [
    {
      // Files carry no policy, and the service worker must not get another page's.
      source: '/((?!_next/static|_next/image|icon|apple-icon|manifest.webmanifest|sw.js).*)',
      missing: [
        { type: 'header', key: 'next-router-prefetch' },
        { type: 'header', key: 'purpose', value: 'prefetch' },
      ],
    },
  ],
}

import { NextRequest } from 'next/server'
import { afterEach, expect, test, vi } from 'vitest'

import { proxy } from '../../proxy'

afterEach(() => vi.unstubAllEnvs())

test('every answer has a policy with a nonce of its own, the same one the page is rendered with', () => {
  const [first, second] = [policyOf(answer()), policyOf(answer())]

  expect(first).toMatch(/script-src 'self' 'nonce-[\w+/=]{20,}' 'strict-dynamic'/)
  expect(first).not.toContain('unsafe')
  expect(first).not.toBe(second)
  const response = answer()
  expect(response.headers.get('x-middleware-request-content-security-policy')).toBe(
    policyOf(response)
  )
  expect(policyOf(response)).toContain(
    `'nonce-${response.headers.get('x-middleware-request-x-nonce')}'`
  )
})

test('only the page’s own origin is spoken to, unless a backend is named', () => {
  vi.stubEnv('ROWCALL_BACKEND_URL', '')
  expect(policyOf(answer())).toContain(`connect-src 'self';`)

  vi.stubEnv('ROWCALL_BACKEND_URL', 'https://backend.example/base')
  expect(policyOf(answer())).toContain(
    `connect-src 'self' https://backend.example wss://backend.example;`
  )
})

test('pictures come from the page alone, and from the one server that is set for the ground', () => {
  vi.stubEnv('ROWCALL_TILES', '')
  expect(policyOf(answer())).toContain(`img-src 'self' data: blob:;`)

  vi.stubEnv('ROWCALL_TILES', 'https://ground.example/{z}/{x}/{y}.png?key=1')
  expect(policyOf(answer())).toContain(`img-src 'self' data: blob: https://ground.example;`)
})

function answer() {
  return proxy(new NextRequest('http://localhost/ready'))
}

function policyOf(response: Response): string {
  return response.headers.get('content-security-policy') ?? ''
}

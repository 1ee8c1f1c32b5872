import { expect, test } from 'vitest'

import { keptApp } from '@/lib/offline/kept-app'
import { isFile, isPage } from '@/lib/offline/whose'

/** Answers by path; a path that is not there has no signal, and `silent` never answers. */
function device(answers: Record<string, () => Response | 'silent'>) {
  const shelf = new Map<string, Response>()
  const pathOf = (request: RequestInfo | URL) =>
    new URL(request instanceof Request ? request.url : String(request), 'https://x').pathname
  const cache = {
    match: async (request: RequestInfo | URL) => shelf.get(pathOf(request))?.clone(),
    put: async (request: RequestInfo | URL, answer: Response) =>
      void shelf.set(pathOf(request), answer),
    keys: async () => [...shelf.keys()].map((path) => new Request(`https://x${path}`)),
    delete: async (request: RequestInfo | URL) => shelf.delete(pathOf(request)),
  }
  const asked: string[] = []
  const app = keptApp({
    // What is used of a cache is above.
    caches: { open: async () => cache as unknown as Cache },
    fetch: async (request) => {
      const path = pathOf(request)
      asked.push(path)
      const answer = answers[path]?.()
      if (answer === undefined) throw new TypeError('no signal')
      return answer === 'silent' ? new Promise<Response>(() => {}) : answer
    },
    wait: async () => {},
  })
  return { app, asked, shelf }
}

test('without signal the last page that came is opened, at whatever address', async () => {
  const answers: Record<string, () => Response | 'silent'> = { '/': () => new Response('shell') }
  const { app } = device(answers)
  await app.page('/')

  delete answers['/']

  expect(await (await app.page('/tree/7')).text()).toBe('shell')
})

test('a page that does not come soon, or comes as a fault of the server, is the kept one', async () => {
  const answers: Record<string, () => Response | 'silent'> = { '/': () => new Response('shell') }
  const { app } = device(answers)
  await app.page('/')

  answers['/ready'] = () => 'silent'
  answers['/next'] = () => new Response('starting', { status: 503 })

  expect(await (await app.page('/ready')).text()).toBe('shell')
  expect(await (await app.page('/next')).text()).toBe('shell')
})

test('a page that was never opened has no signal, and says so', async () => {
  await expect(device({}).app.page('/')).rejects.toThrow('no signal')
})

test('a page that is not there is not kept in place of one that is', async () => {
  const { app, shelf } = device({ '/nowhere': () => new Response('no', { status: 404 }) })

  expect((await app.page('/nowhere')).status).toBe(404)
  expect(shelf.size).toBe(0)
})

test('a file is fetched once', async () => {
  const { app, asked } = device({ '/_next/static/a.js': () => new Response('a') })

  await app.file('https://x/_next/static/a.js')
  expect(await (await app.file('https://x/_next/static/a.js')).text()).toBe('a')

  expect(asked).toEqual(['/_next/static/a.js'])
})

test('files of the app before stay for tabs that still run it; those of older ones go', async () => {
  const { app, shelf } = device({
    '/': () => new Response('shell'),
    ...Object.fromEntries(
      ['one', 'two', 'three'].map((name) => [`/_next/static/${name}.js`, () => new Response(name)])
    ),
  })
  for (const name of ['one', 'two', 'three']) await app.keep([`/_next/static/${name}.js`])

  const files = [...shelf.keys()].filter(isFile)

  expect(files).toEqual(['/_next/static/two.js', '/_next/static/three.js'])
})

test('what lets somebody in needs the server, and what the backend is told goes by', () => {
  expect(['/', '/tree/7', '/emergency'].every(isPage)).toBe(true)
  expect(['/join', '/set-up', '/icon.svg', '/sw.js'].some(isPage)).toBe(false)
  expect(['/rest/v1/rpc/claim_tree', '/auth/v1/token'].some(isFile)).toBe(false)
})

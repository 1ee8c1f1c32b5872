/** The worker that stands between the app and the network. It never touches what is said to the backend. */

import { keptApp } from './kept-app'
import { isFile, isPage } from './whose'

declare const self: ServiceWorkerGlobalScope

const app = keptApp({
  caches: self.caches,
  fetch: (request) => self.fetch(request),
  wait: (ms) => new Promise((done) => setTimeout(done, ms)),
})

// It knows nothing of any one build, so a new one may take over from the old at once.
self.addEventListener('install', () => void self.skipWaiting())
self.addEventListener('activate', (event) => event.waitUntil(self.clients.claim()))

self.addEventListener('fetch', (event) => {
  const { request } = event
  const { origin, pathname } = new URL(request.url)
  if (request.method !== 'GET' || origin !== self.location.origin) return
  if (request.mode === 'navigate' && isPage(pathname)) event.respondWith(app.page(request))
  else if (isFile(pathname))
    event.respondWith(
      request.destination === 'worker' ? app.file(request).then(asAsked) : app.file(request)
    )
})

self.addEventListener('message', (event) => {
  if (Array.isArray(event.data?.files)) event.waitUntil(app.keep(event.data.files))
})

/** A worker reads what to load from its own address, after the #; a kept answer would bring its own without it. */
function asAsked(file: Response): Response {
  return new Response(file.body, file)
}

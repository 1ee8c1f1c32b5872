/**
 * What opens the app without signal: the last page that the server wrote, and the scripts, styles and fonts it takes.
 * Nothing that an orchard holds is here; the app keeps that itself, for each person.
 */

export type Device = {
  caches: Pick<CacheStorage, 'open'>
  fetch: (request: Request | string) => Promise<Response>
  wait: (ms: number) => Promise<void>
}

/** One page serves for every address: which screen is shown is decided in the page. */
const pageKey = '/'
const listKey = '/kept-files'
/** One bar of signal holds a request for minutes; nobody stands at a tree that long. */
const patienceMs = 3_000

export function keptApp({ caches, fetch, wait }: Device) {
  const opened = () => caches.open('rowcall')

  return {
    /** As the server writes it now; if it does not soon, as it wrote it last. */
    async page(request: Request | string): Promise<Response> {
      const shelf = await opened()
      const kept = await shelf.match(pageKey)
      const coming = fetch(request).then(async (page) => {
        if (page.ok && !page.redirected) await shelf.put(pageKey, page.clone())
        return page
      })
      if (!kept) return coming
      const orKept = coming.then(
        (page) => (page.status < 500 ? page : kept),
        () => kept
      )
      return Promise.race([orKept, wait(patienceMs).then(() => kept)])
    },

    /** Its name has the hash of what is in it, so a kept one is never old. */
    async file(request: Request | string): Promise<Response> {
      const shelf = await opened()
      const kept = await shelf.match(request)
      if (kept) return kept
      const file = await fetch(request)
      if (file.ok) await shelf.put(request, file.clone())
      return file
    },

    /** What the open page has loaded. Files that neither it nor the one before it took are of an older app. */
    async keep(files: readonly string[]): Promise<void> {
      const shelf = await opened()
      const before: string[] = await shelf.match(listKey).then((list) => list?.json() ?? [])
      await shelf.put(listKey, Response.json(files))
      await Promise.all([pageKey, ...files].map((path) => this.add(path)))
      const wanted = new Set([pageKey, listKey, ...files, ...before])
      for (const { url } of await shelf.keys())
        if (!wanted.has(new URL(url).pathname)) await shelf.delete(url)
    },

    /** What does not come now comes with the next page. */
    async add(path: string): Promise<void> {
      const shelf = await opened()
      if (path !== pageKey && (await shelf.match(path))) return
      const answer = await fetch(path).catch(() => null)
      if (answer?.ok && !answer.redirected) await shelf.put(path, answer)
    },
  }
}

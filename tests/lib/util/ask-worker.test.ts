import { expect, test, vi } from 'vitest'

import { askWorker } from '@/lib/util/ask-worker'

/** As much of a worker as is spoken to. */
function fakeWorker(answers: (asked: number, worker: Worker) => void) {
  const terminate = vi.fn()
  const worker = {
    terminate,
    postMessage: (asked: number) => answers(asked, worker),
  } as unknown as Worker
  return { worker, terminate }
}

const here = (asked: number) => asked * 100

test('a worker answers, and is let go', async () => {
  const { worker, terminate } = fakeWorker((asked, own) =>
    own.onmessage?.(new MessageEvent('message', { data: asked * 2 }))
  )

  expect(await askWorker({ open: () => worker, here }, 4)).toBe(8)
  expect(terminate).toHaveBeenCalledOnce()
})

test('a worker that does not load leaves it to the page', async () => {
  const { worker, terminate } = fakeWorker((_, own) =>
    own.onerror?.call(own, new Event('error') as ErrorEvent)
  )

  expect(await askWorker({ open: () => worker, here }, 4)).toBe(400)
  expect(terminate).toHaveBeenCalledOnce()
})

test('so does a browser that opens none', async () => {
  const open = () => {
    throw new Error('No workers here.')
  }
  expect(await askWorker({ open, here }, 4)).toBe(400)
})

test('what fails on the page, too, is a fault', async () => {
  const open = () => {
    throw new Error('No workers here.')
  }
  const fails = () => {
    throw new Error('Nor here.')
  }
  await expect(askWorker({ open, here: fails }, 4)).rejects.toThrow('Nor here.')
})

test('called off, nothing is answered, before and after', async () => {
  const { worker, terminate } = fakeWorker(() => {})
  const off = new AbortController()
  const asked = askWorker({ open: () => worker, here }, 4, off.signal)
  off.abort()

  expect(await asked).toBeNull()
  expect(terminate).toHaveBeenCalledOnce()
  expect(await askWorker({ open: () => worker, here }, 4, off.signal)).toBeNull()
})

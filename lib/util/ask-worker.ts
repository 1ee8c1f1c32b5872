/**
 * Lets a worker compute something, so that the page stays at the fingers. Where none comes, without
 * signal or in an old browser, the page computes it itself: later, and not never.
 */

export type Asking<Asked, Answer> = {
  open: () => Worker
  here: (asked: Asked) => Answer
}

/** Null: called off. */
export function askWorker<Asked, Answer>(
  { open, here }: Asking<Asked, Answer>,
  asked: Asked,
  callOff?: AbortSignal
): Promise<Answer | null> {
  return new Promise((resolve, reject) => {
    let worker: Worker | null = null
    const end = () => {
      worker?.terminate()
      callOff?.removeEventListener('abort', onAbort)
    }
    const onAbort = () => {
      end()
      resolve(null)
    }
    const computeHere = () => {
      end()
      try {
        resolve(here(asked))
      } catch (fault) {
        reject(fault)
      }
    }
    if (callOff?.aborted) return resolve(null)
    callOff?.addEventListener('abort', onAbort)
    try {
      worker = open()
      worker.onmessage = ({ data }: MessageEvent<Answer>) => {
        end()
        resolve(data)
      }
      worker.onerror = (event) => {
        // Said already by what follows: the page answers.
        event.preventDefault()
        computeHere()
      }
      worker.postMessage(asked)
    } catch {
      computeHere()
    }
  })
}

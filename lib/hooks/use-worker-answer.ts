'use client'

import { useEffect, useState } from 'react'

import { type Asking, askWorker } from '@/lib/util/ask-worker'

/** The last answer of a worker, and what it answers; null until the first. Another question calls off the one before. */
export function useWorkerAnswer<Asked, Answer>(
  /** The same at each drawing. */
  asking: Asking<Asked, Answer>,
  asked: Asked | null
): { to: Asked; answer: Answer } | null {
  const [told, setTold] = useState<{ to: Asked; answer: Answer } | null>(null)
  useEffect(() => {
    if (asked === null) return
    const callOff = new AbortController()
    void askWorker(asking, asked, callOff.signal).then((answer) => {
      if (answer) setTold({ to: asked, answer })
    })
    return () => callOff.abort()
  }, [asking, asked])
  return told
}

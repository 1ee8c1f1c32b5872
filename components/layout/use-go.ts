'use client'

/** Going from screen to screen. Those of the app are in the page already: at once, and without signal. */

import { useRouter } from 'next/navigation'
import { createContext, use, useMemo } from 'react'

/** Whether a path's screen is shown inside the page, without asking the server for another one. */
export const ShownHere = createContext<(path: string) => boolean>(() => false)

export type Go = { push: (path: string) => void; replace: (path: string) => void }

export function useGo(): Go {
  const isShownHere = use(ShownHere)
  const router = useRouter()
  return useMemo(
    () => ({
      // Next.js hears of both and tells usePathname.
      push: (path) => (isShownHere(path) ? history.pushState(null, '', path) : router.push(path)),
      replace: (path) =>
        isShownHere(path) ? history.replaceState(null, '', path) : router.replace(path),
    }),
    [isShownHere, router]
  )
}

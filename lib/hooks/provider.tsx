'use client'

/** The one client of the page, opened once it is in a browser, and the ways to it. */

import { createContext, type ReactNode, useContext, useEffect, useRef, useState } from 'react'

import { backendInPage, fetchAhead, openBrowserRowcall } from '@/lib/state/browser-rowcall'
import type { Rowcall } from '@/lib/state/rowcall'

// Not when the page has come to life: on a slow phone that is half a second later.
if (typeof document !== 'undefined') fetchAhead()

const RowcallContext = createContext<Rowcall | null>(null)

/** `client`: another one than the page's own, for tests and galleries. */
export function RowcallProvider({ client, children }: { client?: Rowcall; children: ReactNode }) {
  const [opened, setOpened] = useState<Rowcall | null>(null)
  useEffect(() => {
    if (client) return
    const rowcall = openBrowserRowcall(backendInPage())
    setOpened(rowcall)
    return rowcall.close
  }, [client])
  return <RowcallContext value={client ?? opened}>{children}</RowcallContext>
}

/** Null while the page comes to life. */
export function useClient(): Rowcall | null {
  return useContext(RowcallContext)
}

/** The client as soon as there is one: a tap may come before it. */
export function useComingClient(): () => Promise<Rowcall> {
  const client = useClient()
  const waiting = useRef<((rowcall: Rowcall) => void)[]>([])
  const current = useRef(client)
  useEffect(() => {
    current.current = client
    if (!client) return
    for (const resolve of waiting.current.splice(0)) resolve(client)
  }, [client])
  const [coming] = useState(() => async () => {
    const known = current.current
    return known ?? new Promise<Rowcall>((resolve) => waiting.current.push(resolve))
  })
  return coming
}

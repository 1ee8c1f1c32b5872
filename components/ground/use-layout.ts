'use client'

import { useDeferredValue, useEffect, useMemo, useState } from 'react'

import {
  type Layout,
  type LayoutFault,
  type LayoutPlan,
  layOut,
  treesAbout,
} from '@/lib/domain/orchard/layout'
import { type Asking, askWorker } from '@/lib/util/ask-worker'

/** So many are laid out on the page, between two letters that one types; more in a worker. */
const mostOnPage = 10_000

type LaidOut = Layout | LayoutFault

const asking: Asking<LayoutPlan, LaidOut> = {
  open: () => new Worker(new URL('./layout-worker.ts', import.meta.url)),
  here: (plan) => layOut(plan),
}

type LayoutNow = {
  result: LaidOut | null
  /** What is shown is not yet of what is typed. */
  isBehind: boolean
  /** It takes long enough to say so. */
  isAwaited: boolean
}

/** What a plan makes; while another is being worked out the one before stays. */
export function useLayout(plan: LayoutPlan | null): LayoutNow {
  const isLarge = plan !== null && treesAbout(plan) > mostOnPage
  const small = isLarge ? null : plan
  const shown = useDeferredValue(small)
  const onPage = useMemo(() => shown && layOut(shown), [shown])
  const large = useInWorker(isLarge ? plan : null)
  const isAwaited = isLarge && large?.plan !== plan
  return isLarge
    ? { result: large?.result ?? null, isBehind: isAwaited, isAwaited }
    : { result: onPage, isBehind: shown !== small, isAwaited }
}

function useInWorker(plan: LayoutPlan | null): { plan: LayoutPlan; result: LaidOut } | null {
  const [laid, setLaid] = useState<{ plan: LayoutPlan; result: LaidOut } | null>(null)
  useEffect(() => {
    if (plan === null) return
    const callOff = new AbortController()
    void askWorker(asking, plan, callOff.signal).then((result) => {
      if (result) setLaid({ plan, result })
    })
    return () => callOff.abort()
  }, [plan])
  return laid
}

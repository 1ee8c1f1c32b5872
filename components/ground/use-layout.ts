'use client'

import { useDeferredValue, useMemo } from 'react'

import {
  type Layout,
  type LayoutFault,
  type LayoutPlan,
  layOut,
  treesAbout,
} from '@/lib/domain/orchard/layout'
import { useWorkerAnswer } from '@/lib/hooks'
import type { Asking } from '@/lib/util/ask-worker'

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
  const large = useWorkerAnswer(asking, isLarge ? plan : null)
  const isAwaited = isLarge && large?.to !== plan
  return isLarge
    ? { result: large?.answer ?? null, isBehind: isAwaited, isAwaited }
    : { result: onPage, isBehind: shown !== small, isAwaited }
}

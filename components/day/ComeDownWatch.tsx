'use client'

import { Suspense } from 'react'

import { comeDownToSign, stopToAnswer, useSelect } from '@/lib/hooks'
import { ComeDownScreen } from './ComeDownScreen'

/** Over every screen of somebody at a tree: the briefing changed. A stop goes before it. */
export function ComeDownWatch() {
  const asked = useSelect(comeDownToSign)
  const isStopped = useSelect((view) => stopToAnswer(view) !== null)
  if (asked === null || isStopped) return null
  return (
    // Its words may still be on their way; the screen below stays as it is.
    <Suspense fallback={null}>
      <ComeDownScreen key={asked.version} asked={asked} />
    </Suspense>
  )
}

'use client'

import { useEffect } from 'react'

import type { Instant } from '@/lib/events/state'
import { useNow, usePrivatePeople } from '@/lib/hooks'

/** Person → when their phone was last heard. Who is not in it has no phone. */
export type Heard = ReadonlyMap<string, Instant>

/**
 * Reads anew each minute who was heard: heartbeats are no events, so nothing else says that they
 * came. Draws nothing.
 */
export function HeardEachMinute({ onHeard }: { onHeard: (heard: Heard) => void }) {
  const minute = Math.floor((useNow(60_000)?.getTime() ?? 0) / 60_000)
  return <HeardOnce key={minute} onHeard={onHeard} />
}

function HeardOnce({ onHeard }: { onHeard: (heard: Heard) => void }) {
  const people = usePrivatePeople()
  useEffect(() => {
    if (people.state !== 'read') return
    onHeard(
      new Map(
        Object.entries(people.value).flatMap(([id, { heardAt }]) =>
          heardAt === null ? [] : [[id, heardAt] as const]
        )
      )
    )
  }, [people, onHeard])
  return null
}

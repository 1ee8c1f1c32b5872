'use client'

import { useEffect, useRef } from 'react'

import { useNow, useSelect } from '@/lib/hooks'
import { ringsOf } from './rings'
import { listenForTouch, ring } from './sound'

/** Makes the sounds of this device. Draws nothing. */
export function Alarm() {
  const now = useNow(5_000)
  const rings = useSelect((view) => (now === null ? [] : ringsOf(view, now)))
  const rung = useRef(new Set<string>())

  useEffect(listenForTouch, [])
  useEffect(() => {
    const anew = rings.filter(({ key }) => !rung.current.has(key))
    for (const { key } of anew) rung.current.add(key)
    // Together they would only be noise: the gravest is enough.
    const [first] = anew
    if (first) ring(first.tone)
  }, [rings])
  return null
}

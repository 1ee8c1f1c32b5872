'use client'

import { type Way, wayTo } from '@/lib/domain/planning/way'
import { groundOnFoot, useSelect } from '@/lib/hooks'

/** The way on foot; from the tagged end of its row where nobody knows where one is. */
export function useWay(from: number | null, to: number): Way | null {
  const ground = useSelect(groundOnFoot)
  const isSameOrchard = from !== null && ground.spots.has(from)
  return wayTo(ground, isSameOrchard ? from : null, to)
}

'use client'

import { useState } from 'react'

import { useDraft } from '@/lib/hooks'
import { type Read, readCanopy } from './read-canopy'
import { type Moment, noShots, type Shots } from './shots'

type Wrong = { moment: Moment; why: Extract<Read, { state: 'unusable' }>['why'] }

/** What was photographed at a tree; on this phone only, and still there when the camera ended the page. */
export function useShots(tree: number) {
  const draft = useDraft<Shots>(`openness-${tree}`, noShots)
  const [working, setWorking] = useState<Moment | null>(null)
  const [wrong, setWrong] = useState<Wrong | null>(null)

  async function take(moment: Moment, file: File): Promise<void> {
    setWrong(null)
    setWorking(moment)
    const read = await readCanopy(file)
    setWorking(null)
    if (read.state === 'unusable') setWrong({ moment, why: read.why })
    else await draft.writeNow({ ...draft.value, [moment]: read.shot })
  }

  return {
    shots: draft.value,
    ready: draft.ready,
    working,
    wrong,
    take,
    startOver: () => {
      setWrong(null)
      void draft.writeNow(noShots)
    },
  }
}

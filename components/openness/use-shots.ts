'use client'

import { useState } from 'react'

import { useDraft } from '@/lib/hooks'
import { type Read, readCanopy } from './read-canopy'
import { type KeptShots, type Moment, shotsAt, withoutShots, withShot } from './shots'

type Wrong = { moment: Moment; why: Extract<Read, { state: 'unusable' }>['why'] }

const noneKept: KeptShots = []

/** A phone without memory for a picture that large, say. */
const notRead = (): Read => ({ state: 'unusable', why: 'not_a_photo' })

/** What was photographed at a tree; on this phone only, and still there when the camera ended the page. */
export function useShots(tree: number) {
  const draft = useDraft<KeptShots>('openness', noneKept)
  const [working, setWorking] = useState<Moment | null>(null)
  const [wrong, setWrong] = useState<Wrong | null>(null)

  async function take(moment: Moment, file: File): Promise<void> {
    setWrong(null)
    setWorking(moment)
    const read = await readCanopy(file).catch(notRead)
    setWorking(null)
    if (read.state === 'unusable') setWrong({ moment, why: read.why })
    else await draft.writeNow(withShot(draft.value, { tree, moment }, read.shot))
  }

  return {
    shots: shotsAt(draft.value, tree),
    working,
    wrong,
    take,
    startOver: () => {
      setWrong(null)
      void draft.writeNow(withoutShots(draft.value, tree))
    },
  }
}

'use client'

import { useId } from 'react'

import { AskedNote } from '../crew/AskedNote'
import { useLeadWords } from '../crew/use-lead-words'
import { Button } from '../ui/Button'
import { Why } from '../ui/Why'
import { BlockWarnings } from './BlockWarnings'
import { useMakeBlock } from './use-make-block'
import type { NewBlockNow } from './use-new-block'

/** The one step: it says how many trees it makes, or what still lacks. */
export function MakeBlock({ now }: { now: NewBlockNow }) {
  const { ground } = useLeadWords()
  const { lacks, asked, isAsking, make } = useMakeBlock(now)
  const whyId = useId()
  const { layout, isAwaited } = now
  const words = isAwaited
    ? ground.layingOut
    : layout
      ? ground.make(layout.rows, layout.trees.length - layout.gaps)
      : ground.makeNothing
  return (
    <div className="ground-make">
      <BlockWarnings now={now} />
      {layout !== null && layout.gaps > 0 && (
        <p className="small">{ground.stayEmpty(layout.gaps)}</p>
      )}
      <AskedNote asked={asked} />
      {lacks !== null && <Why id={whyId}>{lacks}</Why>}
      {lacks !== null ? (
        <Button kind="call" wide state="off" describedBy={whyId}>
          {words}
        </Button>
      ) : (
        <Button kind="call" wide state={isAsking || isAwaited ? 'waiting' : 'ready'} onPress={make}>
          {words}
        </Button>
      )}
    </div>
  )
}

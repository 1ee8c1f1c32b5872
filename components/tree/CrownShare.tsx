'use client'

import { useState } from 'react'
import type { Species } from '@/lib/domain/orchard/types'
import { isTooMuch, yearsLimit } from '@/lib/domain/pruning/canopy-share'
import { useFormat } from '../layout/use-format'
import { useWords } from '../layout/Words'
import { More } from '../ui/More'
import { Slider } from '../ui/Slider'
import { originWords } from './step-words'

/** In steps of five percent, to sixty. */
const stepPercent = 5
const mostSteps = 12

/** How much has gone of the tree by one's own guess, and whether that is enough for this year. */
export function CrownShare({ species }: { species: Species }) {
  const words = useWords()
  const { cuts, whatToCut } = words
  const format = useFormat()
  const [steps, setSteps] = useState(0)
  const limit = yearsLimit(species)
  const share = (steps * stepPercent) / 100
  const { gone } = whatToCut
  return (
    <More title={gone.title}>
      <Slider
        label={gone.of[limit.of]}
        value={steps}
        least={0}
        most={mostSteps}
        onChange={setSteps}
        says={format.share(share)}
        lessLabel={cuts.less}
        moreLabel={cuts.more}
      />
      <p role="status">
        <b>
          {isTooMuch(species, share)
            ? gone.tooMuch
            : whatToCut.limit[limit.of](format.share(limit.value))}
        </b>
      </p>
      <p className="small">{originWords(words, limit)}</p>
    </More>
  )
}

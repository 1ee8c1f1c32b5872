'use client'

import type { Tree } from '@/lib/domain/orchard/types'
import { asksLadder } from '@/lib/events/missing'
import { useSelect } from '@/lib/hooks'
import { useFormat } from '../layout/use-format'
import { useWords } from '../layout/Words'
import { Segmented } from '../ui/Segmented'
import { Why } from '../ui/Why'
import type { ClaimWish } from './claim-wish'

type LadderChoiceProps = {
  tree: Tree
  wish: ClaimWish
  onChange: (wish: ClaimWish) => void
}

/** Asked only where the tree is high enough for it; feet on the ground unless said otherwise. */
export function LadderChoice({ tree, wish, onChange }: LadderChoiceProps) {
  const { claim, tree: text } = useWords()
  const format = useFormat()
  const isHigh = useSelect((view) => view.state !== null && asksLadder(view.state, tree))
  if (!isHigh || tree.heightCm === null) return null

  const choose = (ladder: boolean) => {
    const company = ladder && wish.company === 'alone' ? null : wish.company
    onChange({ ...wish, company: !ladder && company === null ? 'alone' : company, ladder })
  }
  return (
    <div>
      <Segmented
        label={claim.ladderWhy(format.height(tree.heightCm / 100))}
        options={[
          { value: 'ground', label: claim.ground },
          { value: 'ladder', label: claim.ladder, icon: 'ladder' },
        ]}
        value={wish.ladder ? 'ladder' : 'ground'}
        onChange={(value) => choose(value === 'ladder')}
      />
      {wish.ladder && <Why>{text.phoneAway}</Why>}
    </div>
  )
}

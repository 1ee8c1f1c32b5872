'use client'

import { useSelect, useSend } from '@/lib/hooks'
import type { TreeFacts } from '../tree/use-tree'
import { Button } from '../ui/Button'
import { Facts } from '../ui/Facts'
import { AskedNote } from './AskedNote'
import { NotThisRound } from './NotThisRound'
import { useAsk } from './use-ask'
import type { DealingNow } from './use-dealing'
import { useLeadWords } from './use-lead-words'
import { usePairName } from './use-pair-name'

type TreeDealingProps = {
  facts: TreeFacts
  dealing: DealingNow
}

/** To whom this tree is dealt; taking it back; picking it or its row for the next deal; leaving it out of the round. */
export function TreeDealing({ facts: { tree }, dealing }: TreeDealingProps) {
  const { leadMap } = useLeadWords()
  const send = useSend()
  const pairName = usePairName()
  const { asked, ask } = useAsk()
  const dealtTo = useSelect((view) => view.state?.deals[tree.no] ?? [])
  const isHeld = useSelect((view) =>
    Object.values(view.state?.claims ?? {}).some((claim) => claim.tree === tree.no)
  )
  const isPicked = dealing.picked.has(tree.no)

  return (
    <section className="stack">
      {dealtTo.length > 0 && (
        <Facts facts={[{ mark: 'dealt', text: leadMap.dealtTo(pairName(dealtTo)) }]} />
      )}
      <AskedNote asked={asked} />
      <div className="tree-buttons">
        {dealtTo.length > 0 && (
          <Button onPress={() => ask(send('take_back', { trees: [tree.no] }))}>
            {leadMap.takeBack}
          </Button>
        )}
        {(!isHeld || isPicked) && (
          <Button icon={isPicked ? 'minus' : 'plus'} onPress={() => dealing.pickTree(tree.no)}>
            {isPicked ? leadMap.dropTree : leadMap.pickTree}
          </Button>
        )}
        <Button icon="pick" onPress={() => dealing.pickRow(tree.block, tree.row)}>
          {leadMap.pickRow(tree.row)}
        </Button>
        <NotThisRound trees={[tree.no]} onDone={dealing.say} />
      </div>
    </section>
  )
}

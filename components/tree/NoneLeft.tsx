'use client'

import { CrewScreen } from '../layout/CrewScreen'
import { useWords } from '../layout/Words'
import { Button } from '../ui/Button'
import { Facts } from '../ui/Facts'
import { ConditionsLine } from '../weather/ConditionsLine'
import { FoundAtMyTrees } from './FoundAtMyTrees'
import { HaulInstead } from './HaulInstead'
import { LastWorkNote } from './LastWorkNote'
import type { DayInHand } from './my-day'
import { reasonsNone } from './reasons-none'

type NoneLeftProps = {
  day: DayInHand
  refusedTrees: ReadonlyMap<string, number>
  onOther: () => void
}

/** No tree for me now: why, and what to do instead. */
export function NoneLeft({ day, refusedTrees, onOther }: NoneLeftProps) {
  const { findTree, nextTree } = useWords()
  const reasons = reasonsNone(refusedTrees)
  return (
    <CrewScreen
      step={
        <Button kind="call" onPress={onOther}>
          {nextTree.otherTree}
        </Button>
      }
    >
      <ConditionsLine />
      <LastWorkNote day={day} />
      <FoundAtMyTrees />
      <h1>{nextTree.noneLeft}</h1>
      <p>{nextTree.noneLeftWhy}</p>
      <HaulInstead />
      {reasons.length > 0 && (
        <section>
          <h2>{nextTree.noneBecause}</h2>
          <Facts
            facts={reasons.map(({ reason, trees }) => ({
              icon: 'info',
              text: findTree.reasons[reason](trees),
            }))}
          />
        </section>
      )}
    </CrewScreen>
  )
}

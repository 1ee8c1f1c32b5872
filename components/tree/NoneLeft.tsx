'use client'

import { routes } from '@/lib/routes'
import { CrewScreen } from '../layout/CrewScreen'
import { useWords } from '../layout/Words'
import { Button } from '../ui/Button'
import { ButtonLink } from '../ui/ButtonLink'
import { Facts } from '../ui/Facts'
import { More } from '../ui/More'
import { ConditionsLine, KindsOff } from '../weather/ConditionsLine'
import { FoundAtMyTrees } from './FoundAtMyTrees'
import { HaulInstead } from './HaulInstead'
import { LastWorkNote } from './LastWorkNote'
import type { DayInHand } from './my-day'
import { type ReasonNone, reasonsNone } from './reasons-none'

type NoneLeftProps = {
  day: DayInHand
  refusedTrees: ReadonlyMap<string, number>
  onOther: () => void
}

/** So many reasons tell a lead enough; the rest is for who wants it. */
const shownAtOnce = 3

/** No tree for me now: whom to ask, what to do until then, and why. */
export function NoneLeft({ day, refusedTrees, onOther }: NoneLeftProps) {
  const { common, nextTree } = useWords()
  const reasons = reasonsNone(refusedTrees)
  return (
    <CrewScreen
      side={
        <Button kind="square" icon="other" onPress={onOther}>
          {nextTree.otherTree}
        </Button>
      }
      step={
        <ButtonLink kind="call" href={routes.callLead()}>
          {common.askLead}
        </ButtonLink>
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
          <ReasonList reasons={reasons.slice(0, shownAtOnce)} />
          {reasons.length > shownAtOnce && (
            <More title={nextTree.noneAlso}>
              <ReasonList reasons={reasons.slice(shownAtOnce)} />
            </More>
          )}
        </section>
      )}
      <KindsOff />
    </CrewScreen>
  )
}

function ReasonList({ reasons }: { reasons: readonly ReasonNone[] }) {
  const { findTree } = useWords()
  return (
    <Facts
      facts={reasons.map(({ reason, trees }) => ({
        icon: 'info',
        text: findTree.reasons[reason](trees),
      }))}
    />
  )
}

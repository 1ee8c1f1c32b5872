'use client'

import './planning.css'

import { openShiftOf, useSelect } from '@/lib/hooks'
import { routes } from '@/lib/routes'
import { LeadScreen } from '../crew/LeadScreen'
import { useLeadWords } from '../crew/use-lead-words'
import { ReadingOf } from '../rooms/ReadingOf'
import { ButtonLink } from '../ui/ButtonLink'
import { PlanChoices } from './PlanChoices'
import { PlanDeal } from './PlanDeal'
import { PlanLeft } from './PlanLeft'
import { PlanPictures } from './PlanPictures'
import { TeamList } from './TeamList'
import { useDealPlan } from './use-deal-plan'
import { type Planning, usePlan } from './use-plan'

/** Who prunes what for the rest of the shift: a proposal to be looked at, changed, and dealt in one go. */
export function PlanScreen() {
  const { plan: text } = useLeadWords()
  const isOpen = useSelect((view) => openShiftOf(view) !== null)
  const { planning, times } = usePlan()
  return (
    <LeadScreen here="shift">
      <div className="plan-screen">
        {planning ? (
          <Plan planning={planning} />
        ) : (
          <>
            <h1>{text.link}</h1>
            {isOpen ? (
              <ReadingOf reading={times}>{() => null}</ReadingOf>
            ) : (
              <>
                <p>{text.noShift}</p>
                <ButtonLink kind="call" href={routes.shift()}>
                  {text.toShift}
                </ButtonLink>
              </>
            )}
          </>
        )}
      </div>
    </LeadScreen>
  )
}

function Plan({ planning }: { planning: Planning }) {
  const { plan: text } = useLeadWords()
  const dealing = useDealPlan()
  const { plan, choices } = planning
  const given = plan.teams.filter(
    ({ team, trees }) => trees.length > 0 && !choices.notFor.includes(team[0]?.id ?? '')
  )
  const trees = given.reduce((sum, one) => sum + one.trees.length, 0)
  const change: Planning['change'] = (some) => {
    dealing.forget()
    planning.change(some)
  }
  return (
    <>
      <div className="ahead">
        <h1>{text.title(trees, given.length)}</h1>
        <p className="muted">{text.lead}</p>
        <PlanDeal given={given} trees={trees} {...dealing} />
      </div>
      <div className="plan-parts">
        <div className="stack">
          <TeamList planning={{ ...planning, change }} />
          <PlanLeft planning={planning} />
          <PlanChoices planning={{ ...planning, change }} />
        </div>
        <div className="stack">
          <PlanPictures teams={plan.teams} />
        </div>
      </div>
    </>
  )
}

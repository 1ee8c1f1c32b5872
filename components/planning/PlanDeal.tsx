'use client'

import { useId } from 'react'

import type { TeamPlan } from '@/lib/domain/planning/shift-plan'
import { routes } from '@/lib/routes'
import { useLeadWords } from '../crew/use-lead-words'
import { usePairName } from '../crew/use-pair-name'
import { useFormat } from '../layout/use-format'
import { Button } from '../ui/Button'
import { ButtonLink } from '../ui/ButtonLink'
import { Note } from '../ui/Note'
import type { useDealPlan } from './use-deal-plan'

type PlanDealProps = Pick<ReturnType<typeof useDealPlan>, 'dealing' | 'deal'> & {
  given: readonly TeamPlan[]
  trees: number
}

/** The one step that deals the plan, and what came of it. */
export function PlanDeal({ given, trees, dealing, deal }: PlanDealProps) {
  const { plan: text } = useLeadWords()
  const format = useFormat()
  const pairName = usePairName()
  const whyId = useId()
  const names = (teams: readonly (readonly string[])[]) => format.list(teams.map(pairName))

  if (dealing.state === 'dealing') {
    return (
      <Button kind="call" state="waiting">
        {text.dealing(dealing.at, dealing.all)}
      </Button>
    )
  }
  const isDone = dealing.state === 'dealt' && dealing.trees > 0
  return (
    <>
      {dealing.state === 'dealt' && (
        <>
          {isDone && (
            <Note tone="done" icon="check" role="status">
              {text.dealt(dealing.trees, dealing.teams)}
            </Note>
          )}
          {dealing.refused.length > 0 && (
            <Note tone="stop" icon="cross" role="alert">
              {text.notDealt(names(dealing.refused))}
            </Note>
          )}
          {dealing.noAnswer.length > 0 && (
            <Note tone="call" icon="nobars" role="alert">
              {text.noAnswer(names(dealing.noAnswer))}
            </Note>
          )}
        </>
      )}
      {isDone && (
        <ButtonLink kind="call" icon="map" href={routes.map()}>
          {text.openMap}
        </ButtonLink>
      )}
      {trees > 0 ? (
        <Button kind={isDone ? 'plain' : 'call'} onPress={() => void deal(given)}>
          {text.deal(trees)}
        </Button>
      ) : (
        !isDone && (
          <>
            <p className="small" id={whyId}>
              {text.chooseTeam}
            </p>
            <Button kind="call" state="off" describedBy={whyId}>
              {text.dealNone}
            </Button>
          </>
        )
      )}
    </>
  )
}

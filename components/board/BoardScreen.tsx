'use client'

import './board.css'

import { openShiftOf, useSelect } from '@/lib/hooks'
import { routes } from '@/lib/routes'
import { LeadScreen } from '../crew/LeadScreen'
import { NoTrees } from '../crew/NoTrees'
import { useLeadWords } from '../crew/use-lead-words'
import { BlockAheadLines } from '../planning/BlockAheadLines'
import { RestOfDay } from '../planning/RestOfDay'
import { useDayAhead } from '../planning/use-day-ahead'
import { ButtonLink } from '../ui/ButtonLink'
import { ExceptionsToday } from '../weather/ExceptionsToday'
import { BlockCard } from './BlockCard'
import { FlagList } from './FlagList'
import { NeedsSomebody } from './NeedsSomebody'
import { OnSite } from './OnSite'
import { progressOf } from './progress'

/** The day so far: the answer is the headline, then each block, what is dangerous, who is there. */
export function BoardScreen() {
  const { board, paper } = useLeadWords()
  const blocks = useSelect((view) => view.sheet?.blocks ?? [])
  const { total, blocks: progress } = useSelect(progressOf)
  const hasRound = useSelect((view) => (view.state?.workRoundId ?? null) !== null)
  const isOpen = useSelect((view) => openShiftOf(view) !== null)
  const day = useDayAhead()
  const note = !hasRound
    ? board.noRoundNote
    : !isOpen
      ? board.noShift
      : total.done === 0 && board.nothingYet

  return (
    <LeadScreen
      here="board"
      sideLabel={board.title}
      side={
        <>
          <FlagList kind="arborist" />
          <FlagList kind="disease" />
          <OnSite />
        </>
      }
    >
      <div className="board-head">
        <div className="grow">
          <h1>
            {hasRound ? board.headline(total.done, total.trees, total.inProgress) : board.noRound}
          </h1>
          {note && <p className="muted">{note}</p>}
        </div>
        <ButtonLink href={routes.paper()}>{paper.title}</ButtonLink>
        <ButtonLink kind="call" icon="map" href={hasRound ? routes.map() : routes.shift()}>
          {hasRound ? board.openMap : board.toShift}
        </ButtonLink>
      </div>
      <ExceptionsToday />
      <RestOfDay day={day} />
      {isOpen && <NeedsSomebody />}
      {blocks.length === 0 && <NoTrees />}
      <div className="block-cards">
        {blocks.map((block) => {
          const own = progress.find((one) => one.block === block.no)
          const ahead =
            day.state === 'told' && day.ahead.state === 'known'
              ? day.ahead.blocks.find((one) => one.block === block.no)
              : undefined
          return (
            own && (
              <BlockCard key={block.no} block={block} progress={own}>
                {ahead && day.state === 'told' && (
                  <BlockAheadLines ahead={ahead} nowMs={day.nowMs} endsMs={day.endsMs} />
                )}
              </BlockCard>
            )
          )
        })}
      </div>
    </LeadScreen>
  )
}

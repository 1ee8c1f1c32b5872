'use client'

import type { Block } from '@/lib/domain/orchard/types'
import { useSelect } from '@/lib/hooks'
import { useLeadWords } from '../crew/use-lead-words'
import { useWords } from '../layout/Words'
import { BlockOnPlan } from './BlockOnPlan'
import { KeepOuts } from './KeepOuts'
import { Page } from './Page'
import { PlanFrame } from './PlanFrame'
import { PlanLegend } from './PlanLegend'
import { PlateText } from './PlateText'
import { keepOutsOn, type PlannedBlock, planOf } from './paper-plan'
import { useMarkOnPaper } from './use-mark-on-paper'
import type { PictureOnPaper } from './use-picture-on-paper'

const frame = { width: 720, height: 780 }

type OrchardMapPartProps = { blocks: readonly Block[]; picture: PictureOnPaper | null }

/** All the blocks on one sheet, by name: how they lie to each other. */
export function OrchardMapPart({ blocks, picture }: OrchardMapPartProps) {
  const { paper: text } = useLeadWords()
  const trees = useSelect((view) => view.ground.trees)
  const markOf = useMarkOnPaper()
  const plan = planOf(blocks, [...trees.values()], frame)
  const flags = useSelect((view) => Object.values(view.state?.flags ?? {}))
  const keepOuts = keepOutsOn(plan, flags)
  const hasNorth = plan.blocks.some(({ isSurveyed }) => isSurveyed)
  const title = text.mapOfAll
  return (
    <Page title={title} note={hasNorth ? undefined : text.noNorth}>
      <PlanFrame plan={plan} title={title} hasNorth={hasNorth} picture={picture}>
        {plan.blocks.map((planned) => (
          <BlockOnPlan key={planned.block.no} plan={plan} planned={planned} markOf={markOf} />
        ))}
        <KeepOuts keepOuts={keepOuts} />
        {plan.blocks.map((planned) => (
          <BlockName key={planned.block.no} planned={planned} />
        ))}
      </PlanFrame>
      <PlanLegend
        hasGaps={plan.blocks.some(({ gaps }) => gaps.length > 0)}
        hasKeepOuts={keepOuts.length > 0}
      />
    </Page>
  )
}

const lineUnits = 18

/** Above the block, as on the live map. */
function BlockName({ planned: { block, trees, outline, isSurveyed } }: { planned: PlannedBlock }) {
  const { common } = useWords()
  const { leadMap } = useLeadWords()
  const xs = outline.map(({ x }) => x)
  const x = (Math.min(...xs) + Math.max(...xs)) / 2
  const y = Math.min(...outline.map((corner) => corner.y))
  const said = isSurveyed ? common.trees(trees.length) : leadMap.notSurveyed
  // From below, so that no line's paper covers the one above; short ones, since the next block may be beside it.
  const lines = [block.name, ...said.split(/(?<=:) /)].toReversed()
  if (outline.length === 0) return null
  return (
    <g>
      {lines.map((line, at) => (
        <PlateText
          key={line}
          x={x}
          y={y - 34 - lineUnits * at}
          size={at === lines.length - 1 ? 17 : 13}
          {...(at === lines.length - 1 && { className: 'is-name' })}
        >
          {line}
        </PlateText>
      ))}
    </g>
  )
}

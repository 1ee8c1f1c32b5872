'use client'

import type { Block } from '@/lib/domain/orchard/types'
import { useSelect } from '@/lib/hooks'
import { useLeadWords } from '../crew/use-lead-words'
import { BlockOnPlan, pathOf } from './BlockOnPlan'
import { KeepOuts } from './KeepOuts'
import { Page } from './Page'
import { PlanFrame } from './PlanFrame'
import { PlanLegend } from './PlanLegend'
import { PlateText } from './PlateText'
import { keepOutsOn, neighboursOf, planOf } from './paper-plan'
import { useMarkOnPaper } from './use-mark-on-paper'
import type { PictureOnPaper } from './use-picture-on-paper'

/** Four units to a millimetre: it fills a sheet of A4 as well as one of US Letter. */
const frame = { width: 720, height: 780 }

type MapPartProps = { block: Block; picture: PictureOnPaper | null }

/** One block from above: each tree with its shape, rows by both ends, empty places, keep-outs, what lies beside it. */
export function MapPart({ block, picture }: MapPartProps) {
  const { paper: text } = useLeadWords()
  const trees = useSelect((view) => view.ground.trees)
  const blocks = useSelect((view) => view.ground.blocks)
  const flags = useSelect((view) => Object.values(view.state?.flags ?? {}))
  const markOf = useMarkOnPaper()
  const all = [...trees.values()]
  const plan = planOf([block], all, frame)
  const [planned] = plan.blocks
  if (!planned) return null

  const { isSurveyed, gaps } = planned
  const others = [...blocks.values()].filter(({ no }) => no !== block.no)
  const neighbours = isSurveyed ? neighboursOf(plan, others, all) : []
  const keepOuts = keepOutsOn(plan, flags)
  const title = text.mapOf(block.name)
  return (
    <Page title={title} note={isSurveyed ? undefined : text.noNorth}>
      <PlanFrame plan={plan} title={title} hasNorth={isSurveyed} picture={picture}>
        {neighbours.map(({ block: other, outline }) => (
          <g key={other.no} className="neighbour">
            <path d={pathOf(outline)} />
            <NameInside name={other.name} outline={outline} />
          </g>
        ))}
        <BlockOnPlan plan={plan} planned={planned} markOf={markOf} />
        <KeepOuts keepOuts={keepOuts} />
      </PlanFrame>
      <PlanLegend hasGaps={gaps.length > 0} hasKeepOuts={keepOuts.length > 0} />
    </Page>
  )
}

/** On the sheet even where most of the neighbour is not. */
function NameInside({
  name,
  outline,
}: {
  name: string
  outline: readonly { x: number; y: number }[]
}) {
  const within = outline.filter(({ x, y }) => x > 0 && y > 0 && x < frame.width && y < frame.height)
  if (within.length === 0) return null
  const mean = (values: readonly number[]) => values.reduce((a, b) => a + b, 0) / values.length
  const x = mean(within.map((corner) => corner.x))
  const y = mean(within.map((corner) => corner.y))
  return (
    <PlateText
      x={Math.min(frame.width - 70, Math.max(70, x))}
      y={Math.min(frame.height - 50, Math.max(24, y))}
      size={14}
    >
      {name}
    </PlateText>
  )
}

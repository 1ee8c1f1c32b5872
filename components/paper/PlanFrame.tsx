'use client'

import type { ReactNode } from 'react'

import { useSelect } from '@/lib/hooks'
import { useLeadWords } from '../crew/use-lead-words'
import { useFormat } from '../layout/use-format'
import { barLengthM } from './map-facts'
import { PlanPicture } from './PlanPicture'
import type { PaperPlan } from './paper-plan'
import type { PictureOnPaper } from './use-picture-on-paper'

type PlanFrameProps = {
  plan: PaperPlan
  title: string
  /** North is only known where somebody measured. */
  hasNorth: boolean
  /** The orchard's own picture from above; null: plain paper. */
  picture: PictureOnPaper | null
  children: ReactNode
}

/** Below the drawing, so that nothing of it is covered. */
const footer = 40

/** A drawing from above with its scale and north, over the picture where one is wanted. */
export function PlanFrame({ plan, title, hasNorth, picture, children }: PlanFrameProps) {
  const { paper: text } = useLeadWords()
  const format = useFormat()
  const units = useSelect((view) => view.state?.orchard.units ?? 'metric')
  const { width, height, scale } = plan
  const barM = barLengthM(plan, units)
  const isPictured = picture !== null && hasNorth
  return (
    <svg
      className={isPictured ? 'paper-map is-pictured' : 'paper-map'}
      viewBox={`0 0 ${width} ${height + footer}`}
      role="img"
    >
      <title>{title}</title>
      {isPictured && <PlanPicture picture={picture} plan={plan} />}
      {children}
      <rect className="plan-footer" x={-width} y={height} width={3 * width} height={footer} />
      <g transform={`translate(24 ${height + footer - 16})`}>
        <path className="bar-line" d={`M0-8V0H${barM * scale}V-8`} />
        <text className="bar-words" x={barM * scale + 10} y={0} fontSize={14}>
          {format.distance(barM)}
        </text>
      </g>
      {hasNorth && (
        <g transform={`translate(${width - 24} ${height + footer - 12})`}>
          <path className="bar-line" d="M0 0V-24M-7-15 0-24 7-15" />
          <text className="at-end" x={-16} y={-6} fontSize={14}>
            {text.north}
          </text>
        </g>
      )}
    </svg>
  )
}

import type { ReactNode } from 'react'

import type { WorkStep } from '@/lib/domain/pruning/work-card'
import { CentreDrawing } from './CentreDrawing'
import { CrossingDrawing } from './CrossingDrawing'
import { DeadDrawing } from './DeadDrawing'
import { InsideDrawing } from './InsideDrawing'
import { LeaderDrawing } from './LeaderDrawing'
import { ShootsDrawing } from './ShootsDrawing'
import { SpursDrawing } from './SpursDrawing'
import { YoungDrawing } from './YoungDrawing'

type StepDrawingProps = {
  step: WorkStep
  /** What is to be seen, for those who do not see it. */
  picture: string
  goesWord: string
}

/** What goes in this step, drawn. */
export function StepDrawing({ step, picture, goesWord }: StepDrawingProps) {
  return (
    <figure className="step-drawing">
      {goes(step) && <GoesKey word={goesWord} />}
      <svg className="art" viewBox="0 0 358 200" role="img" aria-label={picture}>
        {drawingOf(step)}
      </svg>
    </figure>
  )
}

/** The sign of what goes, as the drawings have it. */
function GoesKey({ word }: { word: string }) {
  return (
    <figcaption className="key">
      <svg width="46" height="18" viewBox="0 0 46 18" aria-hidden="true">
        <path d="M6 9 44 5V13Z" fill="none" stroke="var(--goes)" strokeWidth="2" />
        <path d="M6 0V18" stroke="var(--goes)" strokeWidth="4" />
      </svg>
      {word}
    </figcaption>
  )
}

/** What is left alone has nothing to take out. */
function goes(step: WorkStep): boolean {
  if (step.code === 'in_training') return false
  return (
    step.code !== 'last_years_wood' ||
    (step.what !== 'leave_and_ask' && step.what !== 'another_winter')
  )
}

function drawingOf(step: WorkStep): ReactNode {
  switch (step.code) {
    case 'dead_broken_diseased':
      return <DeadDrawing />
    case 'crossing_rubbing':
      return <CrossingDrawing />
    case 'open_the_centre':
    case 'let_light_in':
      return <CentreDrawing />
    case 'free_the_leader':
      return <LeaderDrawing />
    case 'ground_up_inside_out':
      return <InsideDrawing />
    case 'renew_spurs':
      return <SpursDrawing />
    case 'renew_shoots':
      return <ShootsDrawing what="do_not_shorten" />
    case 'last_years_wood':
      return <ShootsDrawing what={step.what} />
    case 'in_training':
      return <YoungDrawing />
  }
}

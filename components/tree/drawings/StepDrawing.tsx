import type { ReactNode } from 'react'

import type { WorkStep } from '@/lib/domain/pruning/order'
import type { Messages } from '@/lib/text/messages'
import { CentreDrawing } from './CentreDrawing'
import { CrossingDrawing } from './CrossingDrawing'
import { DeadDrawing } from './DeadDrawing'
import { InsideDrawing } from './InsideDrawing'
import { LeaderDrawing } from './LeaderDrawing'
import { ShootsDrawing } from './ShootsDrawing'

type StepDrawingProps = {
  step: WorkStep
  text: Messages['tree']
}

/** What goes in this step, drawn: the title above it says what it is. */
export function StepDrawing({ step, text }: StepDrawingProps) {
  return (
    <figure className="step-drawing">
      {goes(step) && <GoesKey word={text.drawing.goes} />}
      <svg className="art" viewBox="0 0 358 200" aria-hidden="true">
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

/** Shoots that are left alone have nothing to take out. */
function goes(step: WorkStep): boolean {
  return (
    step.code !== 'last_years_wood' || step.what === 'outer_third' || step.what === 'do_not_shorten'
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
    case 'last_years_wood':
      return <ShootsDrawing what={step.what} />
  }
}

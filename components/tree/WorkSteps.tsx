'use client'

import type { WorkStep } from '@/lib/domain/pruning/order'
import { routes } from '@/lib/routes'
import { useFormat } from '../layout/use-format'
import { useWords } from '../layout/Words'
import { Icon } from '../ui/Icon'
import { Mark } from '../ui/Mark'
import { Step, Steps } from '../ui/Steps'
import { StepDrawing } from './drawings/StepDrawing'
import { StaysAboveBench } from './StaysAboveBench'

/** Thicker limbs are the arborist's. Common practice, no source: 3 to 4 inches. */
const thickestLimbCm = 10

type WorkStepsProps = {
  steps: readonly WorkStep[]
  done: number
  tree: number
  onGoTo: (step: number) => void
}

/** The order of work as a row: done steps shrink, the current one opens with its drawing. */
export function WorkSteps({ steps, done, tree, onGoTo }: WorkStepsProps) {
  const words = useWords()
  return (
    <section aria-label={words.tree.whatToCut}>
      <Steps label={words.tree.whatToCut}>
        {steps.map((step, at) => (
          <Step
            key={step.code}
            state={at < done ? 'done' : at === done ? 'now' : 'later'}
            number={at + 1}
            title={
              at === done ? (
                words.tree.steps[step.code]
              ) : (
                <button type="button" className="step-title" onClick={() => onGoTo(at)}>
                  {words.tree.steps[step.code]}
                </button>
              )
            }
            doneWord={words.common.doneStep}
          >
            {at === done && <OpenStep step={step} tree={tree} isFirst={at === 0} />}
          </Step>
        ))}
      </Steps>
    </section>
  )
}

type OpenStepProps = { step: WorkStep; tree: number; isFirst: boolean }

function OpenStep({ step, tree, isFirst }: OpenStepProps) {
  const { tree: text } = useWords()
  const format = useFormat()
  return (
    <div className="open-step">
      <StepDrawing step={step} text={text} />
      <p>{text.stepSays[step.code]}</p>
      {step.code === 'last_years_wood' && <p>{text.lastYearsWood[step.what]}</p>}
      {isFirst && (
        <a className="look-out" href={routes.flagTree(tree)}>
          <Icon name="drop" size={22} />
          {text.seeSigns}
        </a>
      )}
      <StaysAboveBench>
        <a className="refer" href={routes.flagTree(tree)}>
          <Mark name="arborist" size={22} />
          {text.tooThick(format.diameter(thickestLimbCm))}
        </a>
      </StaysAboveBench>
    </div>
  )
}

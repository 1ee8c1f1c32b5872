'use client'

import type { WorkStep } from '@/lib/domain/pruning/order'
import { houseRuleOf } from '@/lib/domain/safety/house-rules'
import { useSelect } from '@/lib/hooks'
import { routes } from '@/lib/routes'
import { useFormat } from '../layout/use-format'
import { useWords } from '../layout/Words'
import { Icon } from '../ui/Icon'
import { Mark } from '../ui/Mark'
import { Step, Steps } from '../ui/Steps'
import { StepDrawing } from './drawings/StepDrawing'
import { StaysAboveBench } from './StaysAboveBench'

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
  const limbCm = useSelect((view) => houseRuleOf(view.state?.orchard.houseRules ?? {}, 'limb_cm'))
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
          <span>
            {text.tooThick(format.diameter(limbCm))} <small>{text.tooThickFrom}</small>
          </span>
        </a>
      </StaysAboveBench>
    </div>
  )
}

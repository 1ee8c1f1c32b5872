'use client'

import { useEffect, useRef } from 'react'

import type { Tree } from '@/lib/domain/orchard/types'
import type { WorkCard } from '@/lib/domain/pruning/work-card'
import { useFormat } from '../layout/use-format'
import { useWords } from '../layout/Words'
import { Step, Steps } from '../ui/Steps'
import { OpenStep } from './OpenStep'
import { stepWords } from './step-words'

type WorkStepsProps = {
  card: WorkCard
  done: number
  tree: Tree
  onGoTo: (step: number) => void
}

/** The order of work as a row: done steps shrink, the current one opens with its drawing. */
export function WorkSteps({ card: { steps, limit }, done, tree, onGoTo }: WorkStepsProps) {
  const words = useWords()
  const format = useFormat()
  const section = useStepInView(done)
  return (
    <section ref={section} aria-label={words.tree.whatToCut}>
      <Steps label={words.tree.whatToCut}>
        {steps.map((step, at) => {
          const text = stepWords(words, format, step)
          return (
            <Step
              key={step.code}
              state={at < done ? 'done' : at === done ? 'now' : 'later'}
              number={at + 1}
              title={
                at === done ? (
                  text.title
                ) : (
                  <button type="button" className="step-title" onClick={() => onGoTo(at)}>
                    {text.title}
                  </button>
                )
              }
              doneWord={words.common.doneStep}
            >
              {at === done && (
                <OpenStep
                  step={step}
                  text={text}
                  limit={limit}
                  tree={tree.no}
                  species={tree.species}
                  isFirst={at === 0}
                />
              )}
            </Step>
          )
        })}
      </Steps>
    </section>
  )
}

/** The step that opens is brought to the top, so that its picture is seen without a thumb's work. */
function useStepInView(done: number) {
  const section = useRef<HTMLElement>(null)
  const shown = useRef(done)
  useEffect(() => {
    if (shown.current === done) return
    shown.current = done
    section.current?.querySelector('[aria-current="step"]')?.scrollIntoView({ block: 'start' })
  }, [done])
  return section
}

'use client'

import type { Species } from '@/lib/domain/orchard/types'
import type { YearsLimit } from '@/lib/domain/pruning/canopy-share'
import type { WorkStep } from '@/lib/domain/pruning/work-card'
import { houseRuleOf } from '@/lib/domain/safety/house-rules'
import { useSelect } from '@/lib/hooks'
import { routes } from '@/lib/routes'
import { useFormat } from '../layout/use-format'
import { useWords } from '../layout/Words'
import { Icon } from '../ui/Icon'
import { Mark } from '../ui/Mark'
import { More } from '../ui/More'
import { CrownShare } from './CrownShare'
import { StepDrawing } from './drawings/StepDrawing'
import { StaysAboveBench } from './StaysAboveBench'
import { StepWays } from './StepWays'
import { originWords, type StepWords } from './step-words'

type OpenStepProps = {
  step: WorkStep
  text: StepWords
  limit: YearsLimit
  tree: number
  species: Species
  isFirst: boolean
}

/** The step one is at: its picture, what to look for, what to do, what never, and the ways on from here. */
export function OpenStep({ step, text, limit, tree, species, isFirst }: OpenStepProps) {
  const words = useWords()
  const { tree: treeText, whatToCut } = words
  const format = useFormat()
  const limbCm = useSelect((view) => houseRuleOf(view.state?.orchard.houseRules ?? {}, 'limb_cm'))
  return (
    <div className="open-step">
      <StepDrawing step={step} picture={text.picture} goesWord={treeText.goes} />
      {text.do.map((line) => (
        <p key={line}>{line}</p>
      ))}
      <p>
        <b>{whatToCut.lookFor}:</b> {text.look}
      </p>
      <p className="never">
        <Icon name="cross" size={20} />
        <span>
          <b>{whatToCut.never}:</b> {text.never}
        </span>
      </p>
      {isFirst && (
        <a className="look-out" href={routes.flagTree(tree)}>
          <Icon name="drop" size={22} />
          {treeText.seeSigns}
        </a>
      )}
      {step.code === 'ground_up_inside_out' && <CrownShare species={species} />}
      <StepWays step={step.code} tree={tree} />
      <More title={whatToCut.why}>
        <p>{text.why}</p>
        <p className="small">{originWords(words, step.origin)}</p>
        <p>{whatToCut.limit[limit.of](format.share(limit.value))}</p>
        <p className="small">{originWords(words, limit)}</p>
      </More>
      <StaysAboveBench>
        <a className="refer" href={routes.flagTree(tree)}>
          <Mark name="arborist" size={22} />
          <span>
            {treeText.tooThick(format.diameter(limbCm))} <small>{treeText.tooThickFrom}</small>
          </span>
        </a>
      </StaysAboveBench>
    </div>
  )
}

'use client'

import { isOpen, type SeenSign } from '@/lib/domain/safety/five-questions'
import type { Decision } from '@/lib/domain/safety/ours-or-the-arborists'
import { isLeadView, useSelect } from '@/lib/hooks'
import { useWords } from '../layout/Words'
import { ChoiceGroup } from '../ui/ChoiceGroup'
import { More } from '../ui/More'
import { Note } from '../ui/Note'
import { Tile } from '../ui/Tile'
import { type DangerDraft, nextQuestion } from './danger-draft'
import { HazardDrawing } from './drawings/HazardDrawing'
import type { FlagDraft } from './flag-draft'
import { hazardSigns } from './flag-words'
import { LineQuestion } from './LineQuestion'
import { MoreQuestions } from './MoreQuestions'
import { OursOrNot } from './OursOrNot'
import { WhichLimb } from './WhichLimb'

type HazardQuestionProps = {
  flag: FlagDraft
  decision: Decision
  onChange: (part: Partial<FlagDraft>) => void
}

/**
 * First move away, then one question in pictures, which is enough to flag. Four more say whether a limb is ours
 * or the arborist's; they are asked where the pictures leave it open, and offered otherwise.
 */
export function HazardQuestion({ flag, decision, onChange }: HazardQuestionProps) {
  const { flag: text, ours } = useWords()
  const isLead = useSelect(isLeadView)
  const { danger } = flag
  const { seen } = danger
  const change = (part: Partial<DangerDraft>) => onChange({ danger: { ...danger, ...part } })
  const tick = (sign: SeenSign, is: boolean) =>
    change({ seen: hazardSigns.filter((one) => (one === sign ? is : seen.includes(one))) })
  return (
    <>
      <Note icon="warn" tone="stop" role="alert" lead={text.hazard.stepOut} />
      <h1>{text.hazard.title}</h1>
      <ChoiceGroup label={ours.tickAll} as="tiles">
        {hazardSigns.map((sign) => (
          <Tile
            key={sign}
            type="checkbox"
            name="hazard"
            checked={seen.includes(sign)}
            onChange={(is) => tick(sign, is)}
            art={sign !== 'other' && <HazardDrawing sign={sign} />}
          >
            {text.hazard[sign]}
          </Tile>
        ))}
      </ChoiceGroup>
      <p className="small">{text.neverYours}</p>
      {seen.length > 0 && (
        <>
          {isOpen(seen) ? (
            <MoreQuestions danger={danger} upTo={nextQuestion(danger)} onChange={change} />
          ) : (
            <More title={ours.sayMore}>
              <MoreQuestions danger={danger} upTo={5} onChange={change} />
            </More>
          )}
          {isLead && seen.includes('power_line') && (
            <LineQuestion line={danger.line} onChange={(line) => change({ line })} />
          )}
          <OursOrNot decision={decision} isAsking={isOpen(seen) && nextQuestion(danger) < 6} />
          <More title={ours.whichLimb}>
            <WhichLimb
              place={flag.place}
              bearingDeg={danger.bearingDeg}
              onPlace={(place) => onChange({ place })}
              onSide={(bearingDeg) => change({ bearingDeg })}
            />
          </More>
        </>
      )}
    </>
  )
}

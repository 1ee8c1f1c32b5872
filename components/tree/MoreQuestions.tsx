'use client'

import { heights, thicknesses, trunkSigns, underSigns } from '@/lib/domain/safety/five-questions'
import { houseRuleOf } from '@/lib/domain/safety/house-rules'
import { asideOf } from '@/lib/domain/safety/ours-or-the-arborists'
import { useSelect } from '@/lib/hooks'
import type { Format } from '@/lib/text/format'
import { useFormat } from '../layout/use-format'
import { useWords } from '../layout/Words'
import type { DangerDraft } from './danger-draft'
import { OursDrawing } from './drawings/OursDrawing'
import { MeasureField } from './MeasureField'
import { measures, type Units } from './measure'
import { OneOf, SomeOf } from './PictureQuestion'

type MoreQuestionsProps = {
  danger: DangerDraft
  /** The last question that is shown: one after the other where somebody is led through them. */
  upTo: number
  onChange: (part: Partial<DangerDraft>) => void
}

/** Questions two to five: thickness, height, trunk and ground, and what is below. */
export function MoreQuestions({ danger, upTo, onChange }: MoreQuestionsProps) {
  const { ours } = useWords()
  const format = useFormat()
  const rules = useSelect((view) => view.state?.orchard.houseRules ?? {})
  const units = useSelect((view) => view.state?.orchard.units ?? 'metric')
  const { thickness, height, trunk, under } = ours
  const limit = format.diameter(houseRuleOf(rules, 'limb_cm'))
  const feetCm = houseRuleOf(rules, 'feet_cm')
  const ladder = feetCm > 0 ? height.ladder(format.reach(feetCm / 100, 'down')) : height.anyLadder
  const lean = trunk.leaning_far(...asideWords(format, houseRuleOf(rules, 'lean_deg'), units))
  return (
    <>
      <OneOf
        question={2}
        title={thickness.title}
        choices={thicknesses}
        chosen={danger.thickness}
        onChange={(thickness) => onChange({ thickness })}
        words={(choice) =>
          choice === 'not_known' ? thickness.not_known : thickness[choice](limit)
        }
        art={(choice) => choice !== 'not_known' && <OursDrawing of={choice} />}
      />
      <MeasureField
        label={thickness.typed}
        hint={thickness.hint}
        measure={measures.limbCm}
        value={danger.limb}
        onChange={(limb) => onChange({ limb })}
      />
      {upTo >= 3 && (
        <OneOf
          question={3}
          title={height.title}
          choices={heights}
          chosen={danger.height}
          onChange={(height) => onChange({ height })}
          words={(choice) => (choice === 'ladder' ? ladder : height[choice])}
          art={(choice) => choice !== 'not_known' && <OursDrawing of={choice} />}
        />
      )}
      {upTo >= 4 && (
        <SomeOf
          question={4}
          title={trunk.title}
          signs={trunkSigns}
          looked={danger.trunk}
          onChange={(trunk) => onChange({ trunk })}
          words={(sign) => (sign === 'leaning_far' ? lean : trunk[sign])}
          art={(sign) => <OursDrawing of={sign} />}
        />
      )}
      {upTo >= 4 && danger.trunk?.includes('hollow') && (
        <Hollow hollow={danger.hollow} onChange={(hollow) => onChange({ hollow })} />
      )}
      {upTo >= 5 && (
        <SomeOf
          question={5}
          title={under.title}
          signs={underSigns}
          looked={danger.under}
          onChange={(under) => onChange({ under })}
          words={(sign) => under[sign]}
          art={(sign) => <OursDrawing of={sign} />}
        />
      )}
    </>
  )
}

/** A lean as a plumb line shows it: so far aside for each metre or foot of height. Rounded down, so that more leans. */
function asideWords(format: Format, leanDeg: number, units: Units): [aside: string, up: string] {
  const upCm = units === 'us' ? 30.48 : 100
  return [format.span(asideOf(leanDeg, upCm), 'down'), units === 'us' ? '1 ft' : '1 m']
}

type HollowProps = {
  hollow: DangerDraft['hollow']
  onChange: (hollow: DangerDraft['hollow']) => void
}

function Hollow({ hollow, onChange }: HollowProps) {
  const { ours } = useWords()
  const text = ours.hollow
  return (
    <>
      <p className="label">{text.title}</p>
      <p className="small">{text.hint}</p>
      <MeasureField
        label={text.trunk}
        measure={measures.trunkCm}
        value={hollow.trunk}
        onChange={(trunk) => onChange({ ...hollow, trunk })}
      />
      <MeasureField
        label={text.sound}
        measure={measures.soundCm}
        value={hollow.sound}
        onChange={(sound) => onChange({ ...hollow, sound })}
      />
    </>
  )
}

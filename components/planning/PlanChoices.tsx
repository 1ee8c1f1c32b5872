'use client'

import { useSelect } from '@/lib/hooks'
import { useLeadWords } from '../crew/use-lead-words'
import { useFormat } from '../layout/use-format'
import { useNameOf } from '../sync/use-refusal-words'
import { ChoiceGroup } from '../ui/ChoiceGroup'
import { Face } from '../ui/Face'
import { Pick } from '../ui/Pick'
import { Stepper } from '../ui/Stepper'
import type { Planning } from './use-plan'

const stepMinutes = 30

/** Who takes part, in which blocks, and until when. */
export function PlanChoices({ planning }: { planning: Planning }) {
  const { plan: text } = useLeadWords()
  const nameOf = useNameOf()
  const format = useFormat()
  const blocks = useSelect((view) => view.sheet?.blocks ?? [])
  const { people, choices, change, endsMs } = planning
  const by = (minutes: number) => change({ byMinutes: choices.byMinutes + minutes })
  return (
    <section className="ahead" aria-label={text.choices}>
      <h2>{text.choices}</h2>
      <Stepper
        label={text.until}
        shown={format.clock(new Date(endsMs))}
        less={{ label: text.earlier, onPress: () => by(-stepMinutes) }}
        more={{ label: text.later, onPress: () => by(stepMinutes) }}
      />
      {blocks.length > 1 && (
        <ChoiceGroup label={text.blocks} as="picks">
          {blocks.map(({ no, name }) => (
            <Pick
              key={no}
              type="checkbox"
              checked={!choices.notIn.includes(no)}
              onChange={(isOn) => change({ notIn: toggled(choices.notIn, no, !isOn) })}
            >
              {name}
            </Pick>
          ))}
        </ChoiceGroup>
      )}
      <ChoiceGroup label={text.people} as="picks">
        {people.map((id) => (
          <Pick
            key={id}
            type="checkbox"
            checked={!choices.without.includes(id)}
            onChange={(isOn) => change({ without: toggled(choices.without, id, !isOn) })}
            face={<Face name={nameOf(id)} />}
          >
            {nameOf(id)}
          </Pick>
        ))}
      </ChoiceGroup>
    </section>
  )
}

function toggled<Item>(list: readonly Item[], item: Item, isIn: boolean): Item[] {
  return isIn ? [...list, item] : list.filter((one) => one !== item)
}

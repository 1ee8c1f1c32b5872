'use client'

import type { TeamPlan } from '@/lib/domain/planning/shift-plan'
import { useLeadWords } from '../crew/use-lead-words'
import { usePairName } from '../crew/use-pair-name'
import { useFormat } from '../layout/use-format'
import { useNameOf, useTagOf } from '../sync/use-refusal-words'
import { CheckRow } from '../ui/CheckRow'
import { ChoiceGroup } from '../ui/ChoiceGroup'
import { Note } from '../ui/Note'
import { rowPieces } from './row-pieces'
import type { Planning } from './use-plan'

/** Each team with its trees, row by row; a team that is not ticked gets none. */
export function TeamList({ planning }: { planning: Planning }) {
  const { plan: text } = useLeadWords()
  const pairName = usePairName()
  const nameOf = useNameOf()
  const format = useFormat()
  const { plan, choices, change, planned } = planning
  const tick = (id: string, isOn: boolean) =>
    change({
      notFor: isOn ? choices.notFor.filter((one) => one !== id) : [...choices.notFor, id],
    })
  return (
    <section className="ahead" aria-label={text.teams}>
      <h2>{text.teams}</h2>
      {plan.teams.length === 0 && <p>{text.noTeams}</p>}
      <ChoiceGroup label={text.teams} hideLabel as="checks">
        {plan.teams.map((one, at) => {
          const ids = one.team.map(({ id }) => id)
          const first = ids[0] ?? ''
          return (
            <CheckRow
              key={ids.join()}
              checked={one.trees.length > 0 && !choices.notFor.includes(first)}
              onChange={(isOn) => tick(first, isOn)}
              hint={<TeamWay plan={one} />}
            >
              <span className="team-no">{at + 1}</span> {pairName(ids)}
            </CheckRow>
          )
        })}
      </ChoiceGroup>
      {planned.withoutAdult.length > 0 && (
        <Note icon="people">
          {text.withoutAdult(format.list(planned.withoutAdult.map(nameOf)))}
        </Note>
      )}
    </section>
  )
}

function TeamWay({ plan: { team, trees } }: { plan: TeamPlan }) {
  const { plan: text } = useLeadWords()
  const tagOf = useTagOf()
  const format = useFormat()
  if (trees.length === 0) return text.noTrees
  const pieces = rowPieces(trees).map(({ from, to }) =>
    from === to ? tagOf(from) : text.fromTo(tagOf(from), tagOf(to))
  )
  // Of these trees; what they had before is on the map.
  const minutes = trees.reduce((sum, tree) => sum + tree.minutes, 0) / team.length
  const work = text.hours(format.duration(Math.round(minutes / 5) * 5))
  return `${text.teamTrees(trees.length)}, ${work}: ${pieces.join('; ')}`
}

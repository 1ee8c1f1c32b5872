'use client'

import './planning.css'

import type { Season, SeasonAsked } from '@/lib/domain/planning/season'
import { brushShare } from '@/lib/domain/planning/usual-minutes'
import { useFormat } from '../layout/use-format'
import { useLeadWords } from '../layout/Words'
import { ReadingOf } from '../rooms/ReadingOf'
import { Room } from '../rooms/Room'
import { Facts } from '../ui/Facts'
import { Panel } from '../ui/Panel'
import { SeasonSupposed } from './SeasonSupposed'
import { SeasonTable } from './SeasonTable'
import { useSeason } from './use-season'

/** What is left to prune this season, in which months, and how many people that takes. */
export function SeasonScreen() {
  const { season: text } = useLeadWords()
  const coming = useSeason()
  const { told, times } = coming
  return (
    <Room title={text.title} lead={text.lead}>
      {!told && <ReadingOf reading={times}>{() => null}</ReadingOf>}
      {told && told.season.trees === 0 && <p>{text.noTrees}</p>}
      {told && told.season.trees > 0 && (
        <>
          <Answer {...told} />
          <Panel title={text.bySpecies}>
            <SeasonTable species={told.season.species} />
          </Panel>
        </>
      )}
      <SeasonSupposed coming={coming} />
    </Room>
  )
}

function Answer({ season, asked }: { season: Season; asked: SeasonAsked }) {
  const { season: text } = useLeadWords()
  const format = useFormat()
  const { hours, people, days, trees } = season
  const [from, to] = [Math.round(hours.from), Math.round(hours.to)]
  const brush = [hours.from, hours.to].map((one) => Math.round(one * brushShare)) as [
    number,
    number,
  ]
  return (
    <section className="ahead" aria-label={text.title}>
      <p className="ahead-answer">
        {text.hours(trees, from, to)}{' '}
        {people
          ? text.people(Math.ceil(people.from), Math.ceil(people.to), Math.round(days))
          : text.noDay}
      </p>
      <p className="small">{text.often}</p>
      <Facts
        facts={[
          { icon: 'check', text: text.rests(asked.times.length) },
          { icon: 'eye', text: text.share(format.share(asked.shareAtTrees)) },
          { icon: 'heap', text: text.brush(...brush) },
        ]}
      />
    </section>
  )
}

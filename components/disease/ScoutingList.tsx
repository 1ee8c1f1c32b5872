'use client'

import { useState } from 'react'

import { inWalkingOrder, type ToScout } from '@/lib/domain/disease/scouting'
import { useSelect } from '@/lib/hooks'
import { routes } from '@/lib/routes'
import { capitalised, speciesWords } from '@/lib/text/species'
import type { DealingNow } from '../crew/use-dealing'
import { useLeadWords } from '../crew/use-lead-words'
import { useFormat } from '../layout/use-format'
import { useWords } from '../layout/Words'
import { useTagOf } from '../sync/use-refusal-words'
import { Button } from '../ui/Button'
import { List, ListItem } from '../ui/List'
import { Segmented } from '../ui/Segmented'
import { Tag } from '../ui/Tag'
import { whyScouted } from './scouting-words'

/** More are read on the map. */
const mostListed = 60

type ScoutingListProps = { toScout: readonly ToScout[]; dealing: DealingNow }

/** Which trees to look at next, and the ways to get somebody to do it. */
export function ScoutingList({ toScout, dealing }: ScoutingListProps) {
  const words = useWords()
  const leadWords = useLeadWords()
  const { disease } = leadWords
  const format = useFormat()
  const tagOf = useTagOf()
  const trees = useSelect((view) => view.ground.trees)
  const [order, setOrder] = useState<'walking' | 'risk'>('walking')
  if (toScout.length === 0)
    return (
      <section className="disease-part" aria-label={disease.scoutNone}>
        <h2>{disease.scoutNone}</h2>
        <p className="small">{disease.scoutNoneNote}</p>
      </section>
    )

  const listed = order === 'walking' ? inWalkingOrder(toScout, trees) : toScout
  const title = disease.scout(toScout.length)
  return (
    <section className="disease-part" aria-label={title}>
      <h2>{title}</h2>
      <Button
        wide
        kind={dealing.isPicking ? 'plain' : 'call'}
        sub={disease.pickSub}
        onPress={() => dealing.pickTrees(listed.map(({ no }) => no))}
      >
        {disease.pick(toScout.length)}
      </Button>
      <Button wide icon="print" onPress={() => window.print()}>
        {disease.print}
      </Button>
      <Segmented
        label={disease.order}
        hideLabel
        options={[
          { value: 'walking', label: disease.walking },
          { value: 'risk', label: disease.byRisk },
        ]}
        value={order}
        onChange={setOrder}
      />
      <List label={title}>
        {listed.slice(0, mostListed).map((one) => (
          <ListItem
            key={one.no}
            title={capitalised(speciesWords(words, trees.get(one.no)?.species ?? 'other').name)}
            note={whyScouted(leadWords, one)}
            end={<Tag>{tagOf(one.no)}</Tag>}
            href={routes.map(one.no)}
          />
        ))}
      </List>
      {listed.length > mostListed && (
        <p className="small">{disease.andMore(format.number(listed.length - mostListed))}</p>
      )}
      <p className="small">{disease.howListed}</p>
    </section>
  )
}

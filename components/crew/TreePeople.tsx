'use client'

import { useState } from 'react'

import { useNow, useSelect } from '@/lib/hooks'
import { routes } from '@/lib/routes'
import { useFormat } from '../layout/use-format'
import { useNameOf } from '../sync/use-refusal-words'
import type { TreeFacts } from '../tree/use-tree'
import { Button } from '../ui/Button'
import { ButtonLink } from '../ui/ButtonLink'
import { Face } from '../ui/Face'
import { List, ListItem } from '../ui/List'
import { claimAt, holderIn } from './claims'
import { minutesSince } from './crew-order'
import { EndClaim } from './EndClaim'
import { HandOn } from './HandOn'
import { useLeadWords } from './use-lead-words'

/** Who is at this tree, since when, and ending their claim. */
export function TreePeople({ facts: { tree, tag } }: { facts: TreeFacts }) {
  const { leadMap, people: text } = useLeadWords()
  const format = useFormat()
  const nameOf = useNameOf()
  const now = useNow(30_000)
  const [over, setOver] = useState<'end' | 'hand_on' | null>(null)
  const close = () => setOver(null)
  const claim = useSelect((view) => claimAt(view, tree.no))
  if (!claim) return null

  const holder = holderIn(claim)
  const since = leadMap.heldSince(
    format.clock(new Date(claim.openedAt)),
    format.duration(now ? minutesSince(claim.openedAt, now) : 0)
  )
  const partWords = { holder: since, helper: leadMap.helps, learner: leadMap.learns }
  return (
    <section className="stack">
      <List>
        {Object.entries(claim.people).map(([id, part]) => (
          <ListItem
            key={id}
            lead={<Face name={nameOf(id)} />}
            title={part === 'holder' ? leadMap.heldBy(nameOf(id)) : nameOf(id)}
            note={partWords[part]}
            href={routes.person(id)}
          />
        ))}
      </List>
      <div className="tree-buttons">
        {holder && (
          <ButtonLink href={routes.person(holder)} icon="person">
            {leadMap.actFor(nameOf(holder))}
          </ButtonLink>
        )}
        {holder && <Button onPress={() => setOver('hand_on')}>{text.handOn}</Button>}
        <Button onPress={() => setOver('end')}>{leadMap.endClaim}</Button>
      </div>
      <EndClaim
        open={over === 'end'}
        claimId={claim.id}
        name={holder ? nameOf(holder) : ''}
        tag={tag}
        onClose={close}
      />
      {holder && over === 'hand_on' && (
        <HandOn claim={claim} id={holder} name={nameOf(holder)} tag={tag} onClose={close} />
      )}
    </section>
  )
}

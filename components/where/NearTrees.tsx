'use client'

import type { Places } from '@/lib/domain/orchard/around'
import {
  type Fix,
  mostCandidates,
  type NearTree,
  type Where,
  windOf,
} from '@/lib/domain/orchard/where'
import { useFormat } from '../layout/use-format'
import { useWords } from '../layout/Words'
import { useTagOf } from '../sync/use-refusal-words'
import { Icon } from '../ui/Icon'
import { List, ListItem } from '../ui/List'
import { Note } from '../ui/Note'
import { Tag } from '../ui/Tag'
import { WherePlan } from './WherePlan'

type NearTreesProps = {
  where: Where
  fix: Fix
  places: Places
  hasPlan: boolean
  onTree: (tree: number) => void
}

/** From here on a device says how unsure it is: about the distance between two trees. */
const unsureFromM = 5

/** Which trees it may be, how far and in which direction each is, and how sure that is. */
export function NearTrees({ where, fix, places, hasPlan, onTree }: NearTreesProps) {
  const { nextTree, where: text } = useWords()
  const format = useFormat()
  const tagOf = useTagOf()
  const awayOf = ({ metres, bearingDeg }: NearTree) =>
    text.away(
      format.distance(metres),
      nextTree.paces(format.paces(metres)),
      text.winds[windOf(bearingDeg)]
    )
  const unsure = fix.accuracyM > unsureFromM && (
    // Up, to the cautious side.
    <Note icon="warn">{text.unsure(format.keepAway(fix.accuracyM))}</Note>
  )

  if (where.state === 'no_places') return <Note role="status">{text.noPlaces}</Note>
  if (where.state === 'elsewhere') {
    const { tree, metres, bearingDeg } = where.nearest
    return (
      <>
        <p role="status">
          {text.elsewhere(format.distance(metres), text.winds[windOf(bearingDeg)], tagOf(tree.no))}
        </p>
        {unsure}
      </>
    )
  }
  const [first] = where.near
  return (
    <>
      <p role="status" className="where-said">
        {where.state === 'at' && first ? text.at(tagOf(first.tree.no)) : oneOf()}
      </p>
      {unsure}
      {hasPlan && <WherePlan fix={fix} near={where.near} />}
      <List label={text.near}>
        {where.near.map((near) => (
          <ListItem
            key={near.tree.no}
            lead={<Tag>{tagOf(near.tree.no)}</Tag>}
            title={awayOf(near)}
            note={where.state === 'one_of' && near.mayBeNearest ? text.mayBe : undefined}
            end={<Icon name="right" />}
            onPress={() => onTree(near.tree.no)}
          />
        ))}
      </List>
      {where.near.some(({ tree }) => places.get(tree.no)?.surveyed === false) && (
        <p className="small">{text.reckoned}</p>
      )}
    </>
  )

  function oneOf(): string {
    if (where.state !== 'one_of') return ''
    return where.candidates >= mostCandidates
      ? text.ofMany(mostCandidates)
      : text.oneOf(where.candidates)
  }
}

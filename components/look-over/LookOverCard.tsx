'use client'

import type { Proposal } from '@/lib/domain/planning/look-over'
import { useSelect } from '@/lib/hooks'
import { routes } from '@/lib/routes'
import { useLeadWords } from '../crew/use-lead-words'
import { useFormat } from '../layout/use-format'
import { useWords } from '../layout/Words'
import { useNameOf } from '../sync/use-refusal-words'
import { kindWords, plateCells } from '../tree/tree-words'
import { useTree } from '../tree/use-tree'
import { ButtonLink } from '../ui/ButtonLink'
import { Facts } from '../ui/Facts'
import { Plate } from '../ui/Plate'
import { LookOverButtons } from './LookOverButtons'
import type { TreeToLookOver } from './use-look-over'

type LookOverCardProps = {
  waiting: TreeToLookOver
  because: Proposal['because'] | 'chosen'
}

/** The tree to look over now: which, whose, why this one, and the two answers. */
export function LookOverCard({ waiting, because }: LookOverCardProps) {
  const words = useWords()
  const { lookOver } = useLeadWords()
  const format = useFormat()
  const nameOf = useNameOf()
  const facts = useTree(waiting.tree)
  const before = useSelect((view) => view.state?.lookedOver[waiting.tree])
  if (!facts) return null

  const { tree, block, cultivar, tag } = facts
  const names = format.list(waiting.people.map(nameOf))
  const why =
    because === 'chosen'
      ? lookOver.chosen
      : because === 'drawn'
        ? lookOver.drawn
        : lookOver.firstOf(nameOf(because.firstOf))
  return (
    <section className="look-over" aria-label={tag}>
      <div className="row wrap">
        <Plate
          label={words.common.treeSpoken(block.name, tree.row, tree.place)}
          cells={plateCells(words, tree, block)}
        />
        <p>{block.name}</p>
      </div>
      <Facts
        facts={[
          {
            icon: 'people',
            text: lookOver.prunedBy(names, format.clock(new Date(waiting.at))),
          },
          { icon: 'wheel', text: kindWords(words, tree, cultivar) },
          { icon: 'eye', text: why },
          ...(before?.result === 'reopened'
            ? [
                {
                  icon: 'undo',
                  text: lookOver.before(words.lookedOver.reasons[before.reason].found),
                } as const,
              ]
            : []),
        ]}
      />
      <LookOverButtons tree={tree.no} tag={tag} isNext />
      <ButtonLink icon="map" href={routes.map(tree.no)}>
        {lookOver.onMap}
      </ButtonLink>
    </section>
  )
}

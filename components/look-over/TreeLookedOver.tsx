'use client'

import { isToLookOver, useSelect, useToLookOver } from '@/lib/hooks'
import { useLeadWords } from '../crew/use-lead-words'
import { useWords } from '../layout/Words'
import { useNameOf } from '../sync/use-refusal-words'
import type { TreeFacts } from '../tree/use-tree'
import { Facts } from '../ui/Facts'
import { LookOverButtons } from './LookOverButtons'

/** Of one tree beside the map: what was found there, and looking it over where it is done. */
export function TreeLookedOver({ facts: { tree, tag } }: { facts: TreeFacts }) {
  const words = useWords()
  const { lookOver } = useLeadWords()
  const nameOf = useNameOf()
  const found = useSelect((view) => view.state?.lookedOver[tree.no])
  const isOpen = useSelect((view) => view.state !== null && isToLookOver(view.state, tree.no))
  if (!isOpen && !found) return null

  return (
    <section className="stack">
      {found && (
        <Facts
          facts={[
            found.result === 'passed'
              ? { icon: 'check', text: lookOver.passed }
              : {
                  icon: 'undo',
                  text: lookOver.reopened(
                    words.lookedOver.reasons[found.reason].found,
                    nameOf(found.byId)
                  ),
                },
          ]}
        />
      )}
      {isOpen && <UnlessMine tree={tree.no} tag={tag} />}
    </section>
  )
}

function UnlessMine({ tree, tag }: { tree: number; tag: string }) {
  const { lookOver } = useLeadWords()
  const reading = useToLookOver()
  const isMine = useSelect((view) => {
    const waiting = reading.state === 'read' && reading.value.trees.find((one) => one.tree === tree)
    return waiting ? waiting.people.includes(view.me?.personId ?? '') : false
  })
  return isMine ? (
    <p className="small">{lookOver.yours}</p>
  ) : (
    <LookOverButtons tree={tree} tag={tag} />
  )
}

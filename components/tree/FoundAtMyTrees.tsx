'use client'

import { useSelect } from '@/lib/hooks'
import { routes } from '@/lib/routes'
import { useWords } from '../layout/Words'
import { useNameOf, useTagOf } from '../sync/use-refusal-words'
import { ButtonLink } from '../ui/ButtonLink'
import { Note } from '../ui/Note'
import { Tag } from '../ui/Tag'
import { type Finding, findingsFor } from './findings'

/** What a lead found at trees I worked on: what to do better, with the way there. `next`: the tree that the screen leads to anyhow. */
export function FoundAtMyTrees({ next = null }: { next?: number | null }) {
  const { lookedOver } = useWords()
  const tagOf = useTagOf()
  const reopened = useSelect((view) => findingsFor(view).reopened)
  return reopened.map((finding) => (
    <div className="stack" key={finding.tree}>
      <FindingNote finding={finding} />
      {finding.withId === null && finding.tree !== next && (
        <ButtonLink icon="undo" href={`${routes.nextTree()}?tree=${finding.tree}`}>
          {lookedOver.toTree(tagOf(finding.tree))}
        </ButtonLink>
      )}
    </div>
  ))
}

/** The same at the tree itself. */
export function FoundHere({ tree }: { tree: number }) {
  const finding = useSelect((view) => findingsFor(view).reopened.find((one) => one.tree === tree))
  return finding ? <FindingNote finding={finding} /> : null
}

function FindingNote({ finding: { tree, reason, byId, withId } }: { finding: Finding }) {
  const { lookedOver } = useWords()
  const nameOf = useNameOf()
  const tagOf = useTagOf()
  const { found, better } = lookedOver.reasons[reason]
  return (
    <Note icon="eye" lead={`${lookedOver.by(tagOf(tree), nameOf(byId))} ${found}.`}>
      {better}
      {withId !== null && ` ${lookedOver.withOther(nameOf(withId))}`}
    </Note>
  )
}

/** The last few of mine that need nothing more. */
export function PassedTrees() {
  const { lookedOver } = useWords()
  const tagOf = useTagOf()
  const passed = useSelect((view) => findingsFor(view).passed)
  if (passed.length === 0) return null
  return (
    <p className="small row wrap">
      {lookedOver.passed}
      {passed.map((tree) => (
        <Tag key={tree}>{tagOf(tree)}</Tag>
      ))}
    </p>
  )
}

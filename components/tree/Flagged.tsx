'use client'

import { myTree, useSelect } from '@/lib/hooks'
import { routes } from '@/lib/routes'
import { CrewScreen } from '../layout/CrewScreen'
import { useFormat } from '../layout/use-format'
import { useWords } from '../layout/Words'
import { ButtonLink } from '../ui/ButtonLink'
import { Note } from '../ui/Note'
import { MyFlagNote } from './MyFlagNote'
import type { TreeFacts } from './use-tree'

type FlaggedProps = {
  facts: TreeFacts
  flag: string
  kind: 'disease' | 'arborist'
}

/** The flag is up: what to do now, and for two minutes the way to take it back. */
export function Flagged({ facts: { tree, tag }, flag, kind }: FlaggedProps) {
  const words = useWords()
  const format = useFormat()
  const raised = useSelect((view) => view.state?.flags[flag] ?? null)
  const isOffline = useSelect((view) => view.signal === 'no_signal')
  const isMine = useSelect((view) => {
    const mine = myTree(view)
    return mine.state !== 'none' && mine.tree === tree.no
  })
  const { flag: text } = words
  return (
    <CrewScreen
      tree={tree.no}
      step={
        isMine ? (
          <ButtonLink kind="call" href={routes.tree(tree.no)}>
            {words.claim.backToIt}
          </ButtonLink>
        ) : (
          <ButtonLink kind="call" href={routes.nextTree()}>
            {words.tree.toNextTree}
          </ButtonLink>
        )
      }
    >
      {!raised ? (
        <h1>{text.withdrawn}</h1>
      ) : kind === 'arborist' ? (
        <>
          <h1>{text.hazardFlagged(tag)}</h1>
          <Note mark="arborist" tone="arb" lead={text.comeAway}>
            {raised.keepOutM !== null && text.keepAway(format.keepAway(raised.keepOutM))}
          </Note>
        </>
      ) : (
        <>
          <h1>{text.diseaseFlagged(tag)}</h1>
          <Note mark="disease" tone="sick" lead={text.wipeBlade} />
        </>
      )}
      {raised && <p>{isOffline ? text.keptTell : text.seesNow}</p>}
      <MyFlagNote tree={tree.no} />
    </CrewScreen>
  )
}

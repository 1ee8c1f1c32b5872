'use client'

import { useState } from 'react'

import { useSelect, useSend } from '@/lib/hooks'
import { routes } from '@/lib/routes'
import { treeTag } from '@/lib/text/tree-name'
import { useLeadWords } from '../crew/use-lead-words'
import { useWords } from '../layout/Words'
import { Button } from '../ui/Button'
import { ButtonLink } from '../ui/ButtonLink'
import { CheckRow } from '../ui/CheckRow'
import { Note } from '../ui/Note'
import { Panel } from '../ui/Panel'
import { Tag } from '../ui/Tag'
import { type BroughtIn, nothingSaid } from './bring-in-draft'
import { flagOf, type HazardHere, hazardsHere } from './hazards-here'
import type { SaidDraft } from './use-bring-in'

/** What came in, and the hazards that the file knows of: a manager says which become flags. */
export function BroughtInNote({ done, said }: { done: BroughtIn; said: SaidDraft }) {
  const { bringIn: text } = useLeadWords()
  const send = useSend()
  const here = useSelect((view) => hazardsHere(view, done.hazards))
  const write = (change: Partial<BroughtIn>) =>
    said.writeNow({ ...nothingSaid, done: { ...done, ...change } })

  const flag = async (chosen: readonly HazardHere[]) => {
    for (const hazard of chosen) await send('flag_tree', flagOf(hazard))
    await write({ hazards: [], flagged: chosen.length })
  }
  const isAsked = here.length > 0
  return (
    <Panel>
      <div className="stack">
        <Note tone="done" icon="check" role="status">
          {text.done(done.trees, done.changed)}
          {done.leftOut > 0 && ` ${text.stayOutside(done.leftOut)}.`}
        </Note>
        {done.flagged > 0 && (
          <Note tone="arb" mark="arborist" role="status">
            {text.flagged(done.flagged)}
          </Note>
        )}
        {isAsked && (
          <KnownHazards
            key={here.length}
            hazards={here}
            onFlag={flag}
            onNone={() => write({ hazards: [] })}
          />
        )}
        <ButtonLink kind={isAsked ? 'plain' : 'call'} href={routes.map()}>
          {text.onMap}
        </ButtonLink>
        <ButtonLink href={routes.shift()}>{text.nextRound}</ButtonLink>
        {!isAsked && (
          <Button onPress={() => void said.writeNow(nothingSaid)}>{text.moreTrees}</Button>
        )}
      </div>
    </Panel>
  )
}

type KnownHazardsProps = {
  hazards: readonly HazardHere[]
  onFlag: (chosen: readonly HazardHere[]) => void
  onNone: () => void
}

function KnownHazards({ hazards, onFlag, onNone }: KnownHazardsProps) {
  const { flag } = useWords()
  const { bringIn: text } = useLeadWords()
  const [left, setLeft] = useState<ReadonlySet<number>>(new Set())
  const chosen = hazards.filter(({ tree }) => !left.has(tree))
  const tick = (tree: number, isOn: boolean) => {
    const next = new Set(left)
    if (isOn) next.delete(tree)
    else next.add(tree)
    setLeft(next)
  }
  return (
    <section className="stack">
      <h2>{text.hazardsTitle(hazards.length)}</h2>
      <p>{text.hazardsLead}</p>
      <div>
        {hazards.map((hazard) => (
          <CheckRow
            key={hazard.tree}
            checked={!left.has(hazard.tree)}
            onChange={(isOn) => tick(hazard.tree, isOn)}
            hint={hazard.note ?? undefined}
          >
            <Tag>{treeTag(hazard)}</Tag> {flag.hazard[hazard.sign]}
          </CheckRow>
        ))}
      </div>
      {chosen.length > 0 && (
        <Button kind="call" onPress={() => onFlag(chosen)}>
          {text.flagThem(chosen.length)}
        </Button>
      )}
      <Button onPress={onNone}>{text.notNow}</Button>
    </section>
  )
}

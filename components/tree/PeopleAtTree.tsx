'use client'

import { useState } from 'react'

import type { Claim, Part } from '@/lib/events/state'
import { useSelect } from '@/lib/hooks'
import { useWords } from '../layout/Words'
import { useNameOf } from '../sync/use-refusal-words'
import { Button } from '../ui/Button'
import { Face } from '../ui/Face'
import { List, ListItem } from '../ui/List'
import { Panel } from '../ui/Panel'
import { AskAtTree } from './AskAtTree'
import { PersonSheet } from './PersonSheet'
import { usePeopleFree } from './use-people-free'

type PeopleAtTreeProps = {
  claimId: string
  claim: Claim
  isHolder: boolean
  /** Where it is a row of brush. */
  isRow?: boolean
}

/** Who works here with me, and the tree handed on. */
export function PeopleAtTree({ claimId, claim, isHolder, isRow = false }: PeopleAtTreeProps) {
  const { brush, tree: text } = useWords()
  const title = isRow ? brush.inThisRow : text.atThisTree
  const nameOf = useNameOf()
  const me = useSelect((view) => view.me?.personId ?? '')
  const free = usePeopleFree()
  const [sheet, setSheet] = useState<'helper' | 'hand_over' | null>(null)
  const others = Object.entries(claim.people).filter(([id]) => id !== me)
  const isAlone = others.length === 0 && claim.buddyId === null
  const helpers = others.map(([id]) => id)
  const part: Record<Part, string> = {
    holder: text.holder,
    helper: text.helper,
    learner: text.learner,
  }
  const close = () => setSheet(null)

  return (
    <Panel title={title}>
      {isAlone && <p className="small">{text.onlyYou}</p>}
      {!isAlone && (
        <List label={title}>
          {others.map(([id, as]) => (
            <ListItem
              key={id}
              lead={<Face name={nameOf(id)} />}
              title={nameOf(id)}
              note={part[as]}
            />
          ))}
          {claim.buddyId !== null && (
            <ListItem
              lead={<Face name={nameOf(claim.buddyId)} />}
              title={nameOf(claim.buddyId)}
              note={text.buddy}
            />
          )}
        </List>
      )}
      {isHolder ? (
        <div className="row wrap at-tree">
          <Button icon="people" onPress={() => setSheet('helper')}>
            {text.addHelper}
          </Button>
          <Button icon="send" onPress={() => setSheet('hand_over')}>
            {text.handOver}
          </Button>
        </div>
      ) : (
        <AskAtTree name="leave_tree" args={{ claim: claimId }} icon="undo">
          {isRow ? brush.leaveRow : text.leaveTree}
        </AskAtTree>
      )}
      {sheet === 'helper' && (
        <PersonSheet
          title={text.addHelper}
          why={text.addHelperWhy}
          people={free.iMayAdd}
          ask={(personId) => ({
            name: 'join_tree',
            args: { claim: claimId, part: 'helper' },
            personId,
          })}
          onClose={close}
        />
      )}
      {sheet === 'hand_over' && (
        <PersonSheet
          title={text.handOverTo}
          people={[...helpers, ...free.here.filter((id) => !helpers.includes(id))]}
          none={text.nobodyFree}
          ask={(to) => ({ name: 'hand_over', args: { claim: claimId, to } })}
          onClose={close}
        />
      )}
    </Panel>
  )
}

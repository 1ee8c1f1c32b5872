'use client'

import { useState } from 'react'

import { myTree, type Sent, toolsInHand, useSelect, useSend } from '@/lib/hooks'
import { routes } from '@/lib/routes'
import { useFormat } from '../layout/use-format'
import { useWords } from '../layout/Words'
import { useTagOf } from '../sync/use-refusal-words'
import { WhyNot } from '../sync/WhyNot'
import { Button } from '../ui/Button'
import { offWhen } from '../ui/button-look'
import { Icon } from '../ui/Icon'
import { List, ListItem } from '../ui/List'
import { Note } from '../ui/Note'
import { Panel } from '../ui/Panel'
import { useWentHome } from './use-went-home'
import './break.css'

/** What is still in hand, each with the way to it, and then counted out. */
export function GoHome() {
  const { breakLeave } = useWords()
  const format = useFormat()
  const tagOf = useTagOf()
  const send = useSend()
  const [sent, setSent] = useState<Sent | null>(null)
  const mine = useSelect(myTree)
  const tools = useSelect((view) => toolsInHand(view).map(({ label }) => label))
  const unsent = useSelect((view) => view.unsent.length)
  const wentHome = useWentHome()
  const holdsTree = mine.state !== 'none'
  const isHeldBack = mine.state === 'held' || tools.length > 0

  async function leave() {
    // Before the screen changes under it.
    await wentHome.remember()
    setSent(await send('leave', {}))
  }

  return (
    <Panel title={breakLeave.leaveTitle}>
      <p className="small" id="leave-note">
        {isHeldBack ? breakLeave.before : breakLeave.leaveNote}
      </p>
      {(holdsTree || tools.length > 0) && (
        <List label={breakLeave.before}>
          {holdsTree && (
            <ListItem
              lead={<Icon name="cross" />}
              title={
                mine.tree === null ? breakLeave.stillAtRow : breakLeave.stillHeld(tagOf(mine.tree))
              }
              note={breakLeave.finishFirst}
              href={mine.tree === null ? routes.haul() : routes.tree(mine.tree)}
              end={<Icon name="right" />}
            />
          )}
          {tools.length > 0 && (
            <ListItem
              lead={<Icon name="cross" />}
              title={breakLeave.stillTools(format.list(tools))}
              note={breakLeave.giveBackFirst}
              href={routes.tools()}
              end={<Icon name="right" />}
            />
          )}
        </List>
      )}
      {unsent > 0 && (
        <Note tone="call" icon="kept" lead={breakLeave.unsentFirst(unsent)}>
          {breakLeave.unsentFirstNote}
        </Note>
      )}
      <div className="after-note">
        <WhyNot sent={sent} />
        <Button
          wide
          icon="house"
          {...offWhen(isHeldBack, 'leave-note')}
          onPress={() => void leave()}
        >
          {breakLeave.leave}
        </Button>
      </div>
    </Panel>
  )
}

'use client'

import { useState } from 'react'

import { toolsInHand, useSelect, useSend } from '@/lib/hooks'
import { useWords } from '../layout/Words'
import { Button } from '../ui/Button'
import { List } from '../ui/List'
import { Panel } from '../ui/Panel'
import { AskedNote } from './AskedNote'
import { TakeTool } from './TakeTool'
import { useAsk } from './use-ask'
import { useLeadWords } from './use-lead-words'

/** What they have in hand; giving it back, wiping it, taking another. */
export function PersonTools({ id, name }: { id: string; name: string }) {
  const { things } = useWords()
  const { people: text } = useLeadWords()
  const send = useSend()
  const { asked, ask } = useAsk()
  const [isTaking, setIsTaking] = useState(false)
  const inHand = useSelect((view) => toolsInHand(view, id))
  const isHere = useSelect((view) => view.state?.attendance[id] !== undefined)
  const forThem = { personId: id }

  return (
    <Panel title={text.tools}>
      <div className="stack">
        {inHand.length === 0 && <p className="small">{text.noTools}</p>}
        <List label={text.tools}>
          {inHand.map(({ no, label, kind, clean, fit }) => (
            <li key={no} className="person-row">
              <span className="item grow">
                <span className="grow">
                  <b>{label}</b>
                  <span className="small">
                    {[things.tool[kind], fit ? null : text.outOfUse, clean ? null : text.notClean]
                      .filter(Boolean)
                      .join(', ')}
                  </span>
                </span>
              </span>
              {!clean && (
                <Button
                  label={text.cleanTool(label)}
                  onPress={() => ask(send('clean_tool', { tools: [no] }, forThem))}
                >
                  {text.clean}
                </Button>
              )}
              <Button
                label={text.giveBackTool(label)}
                onPress={() => ask(send('return_tool', { tool: no }, forThem))}
              >
                {text.giveBack}
              </Button>
            </li>
          ))}
        </List>
        <AskedNote asked={asked} whose={name} />
        {isHere && <Button onPress={() => setIsTaking(true)}>{text.takeFor}</Button>}
      </div>
      <TakeTool open={isTaking} id={id} name={name} onClose={() => setIsTaking(false)} />
    </Panel>
  )
}

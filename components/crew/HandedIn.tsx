'use client'

import { type CameIn, useSend } from '@/lib/hooks'
import { useFormat } from '../layout/use-format'
import { useTagOf } from '../sync/use-refusal-words'
import { Button } from '../ui/Button'
import { Panel } from '../ui/Panel'
import { Tag } from '../ui/Tag'
import { AskedNote } from './AskedNote'
import { useAsk } from './use-ask'
import { useLeadWords } from './use-lead-words'

/** The unsent work of somebody who was put out: its trees count when a lead says so. */
export function HandedIn({ handIn }: { handIn: CameIn['handIns'][number] }) {
  const { cameIn: text } = useLeadWords()
  const format = useFormat()
  const tagOf = useTagOf()
  const send = useSend()
  const { asked, isAsking, ask } = useAsk()
  const at = new Date(handIn.at)
  const sayOf = (name: string) =>
    Object.hasOwn(text.things, name) ? text.things[name as keyof typeof text.things] : text.other
  return (
    <Panel title={text.handedIn(handIn.name ?? text.somebody)}>
      <div className="stack">
        <p className="small">{`${format.date(at)}, ${format.clock(at)}`}</p>
        <ul className="plain-list">
          {handIn.things.map(({ name, tree }, place) => (
            // biome-ignore lint/suspicious/noArrayIndexKey: they stay as they were handed in
            <li key={place}>
              {sayOf(name)} {tree !== null && <Tag>{tagOf(tree)}</Tag>}
            </li>
          ))}
        </ul>
        <p className="small">{text.acceptNote}</p>
        <AskedNote asked={asked} />
        <Button
          kind="call"
          state={isAsking ? 'waiting' : 'ready'}
          onPress={() => ask(send('accept_hand_in', { handIn: handIn.id }))}
        >
          {text.accept}
        </Button>
      </div>
    </Panel>
  )
}

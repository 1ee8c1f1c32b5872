'use client'

import { type CallRead, useSelect, useSend } from '@/lib/hooks'
import { routes } from '@/lib/routes'
import { AskedNote } from '../crew/AskedNote'
import { useAsk } from '../crew/use-ask'
import { useLeadWords } from '../crew/use-lead-words'
import { useFormat } from '../layout/use-format'
import { useNameOf, useTagOf } from '../sync/use-refusal-words'
import { Button } from '../ui/Button'
import { ButtonLink } from '../ui/ButtonLink'
import { Face } from '../ui/Face'
import { ListItem } from '../ui/List'
import { Tag } from '../ui/Tag'
import { CallNote } from './CallNote'
import { useCallTitle } from './call-title'

type CallItemProps = {
  call: CallRead
  /** Of an open one. */
  onEnd?: () => void
}

/** One call in the list, with what was written; an open one can be answered and ended. */
export function CallItem({ call, onEnd }: CallItemProps) {
  const nameOf = useNameOf()
  const title = useCallTitle()(call)
  const { calls: text } = useLeadWords()
  return (
    <ListItem
      lead={<Face name={nameOf(call.calledBy)} kind={onEnd ? 'ink' : 'plain'} />}
      title={title}
      note={
        <>
          {onEnd ? <CallNote call={call} /> : <HowItEnded call={call} />}
          {call.note !== null && <span className="call-note">{text.note(call.note)}</span>}
          {call.outcome !== null && <span className="call-note">{text.outcome(call.outcome)}</span>}
        </>
      }
      end={onEnd ? <Acts call={call} title={title} onEnd={onEnd} /> : <WriteIncident call={call} />}
    />
  )
}

function Acts({ call, title, onEnd }: { call: CallRead; title: string; onEnd: () => void }) {
  const { leadMap, calls: text } = useLeadWords()
  const send = useSend()
  const { asked, ask } = useAsk()
  const me = useSelect((view) => view.me?.personId)
  return (
    <div className="call-acts">
      <AskedNote asked={asked} />
      {call.tree !== null && (
        <ButtonLink icon="map" href={routes.map(call.tree)} label={`${text.where}: ${title}`}>
          {text.where}
        </ButtonLink>
      )}
      {call.answeredBy !== me && (
        <Button
          label={`${leadMap.coming}: ${title}`}
          onPress={() => void ask(send('answer_call', { call: call.call }))}
        >
          {call.answeredBy === null ? leadMap.coming : text.alsoYou}
        </Button>
      )}
      <Button label={text.endTitle(title)} onPress={onEnd}>
        {text.end}
      </Button>
    </div>
  )
}

function HowItEnded({ call }: { call: CallRead }) {
  const { calls: text } = useLeadWords()
  const format = useFormat()
  const nameOf = useNameOf()
  const tagOf = useTagOf()
  const { answeredBy, answeredAt, calledAt, endedBy, endedAt, tree } = call
  const waited = Date.parse(answeredAt ?? calledAt) - Date.parse(calledAt)
  return (
    <span className="call-note">
      {tree !== null && <Tag>{tagOf(tree)}</Tag>}
      <span>{format.clock(new Date(calledAt))}</span>
      <span>
        {answeredBy === null
          ? text.notAnswered
          : text.answeredAfter(nameOf(answeredBy), format.waiting(waited))}
      </span>
      {endedBy !== null && endedAt !== null && (
        <span>{text.endedBy(nameOf(endedBy), format.clock(new Date(endedAt)))}</span>
      )}
    </span>
  )
}

/** Only proposed where somebody was hurt; for everything else there is the button beside the list. */
function WriteIncident({ call }: { call: CallRead }) {
  const { calls: text } = useLeadWords()
  if (call.hasIncident) return <span className="small">{text.written}</span>
  if (call.kind !== 'injury') return null
  return <ButtonLink href={routes.calls(call.call)}>{text.writeNow}</ButtonLink>
}

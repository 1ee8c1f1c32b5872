'use client'

import { useId } from 'react'

import type { Shift } from '@/lib/events/state'
import { useBriefing, useDraft, useSelect, useSend } from '@/lib/hooks'
import { AskedNote } from '../crew/AskedNote'
import { useAsk } from '../crew/use-ask'
import { useLeadWords } from '../crew/use-lead-words'
import { Button } from '../ui/Button'
import { Segmented } from '../ui/Segmented'
import { Why } from '../ui/Why'
import { AddTopic } from './AddTopic'
import {
  type BriefingDraft,
  isWritten,
  moved,
  proposedFor,
  topicArgs,
  topicsOf,
} from './briefing-draft'
import { TopicCard } from './TopicCard'

type BriefingFormProps = {
  shift: Shift & { id: string }
  /** The next step of the screen; otherwise another one holds the apricot. */
  isNext: boolean
  onDone?: () => void
}

/** Writes the briefing of a shift, or its next version: topics, their order, own words. */
export function BriefingForm({ shift, isNext, onDone }: BriefingFormProps) {
  const { shift: text } = useLeadWords()
  const send = useSend()
  const whyId = useId()
  const last = useBriefing(shift.id)
  const proposed = useSelect(proposedFor)
  const draft = useDraft<BriefingDraft | null>(`briefing|${shift.id}`, null)
  const { asked, ask } = useAsk()
  const version = shift.briefingVersion + 1
  const before = last.state === 'read' && last.value ? topicsOf(last.value) : proposed
  const { topics, change } = draft.value ?? { topics: before, change: null }
  const write = (part: Partial<BriefingDraft>) => draft.write({ topics, change, ...part })
  const lacks = !isWritten(topics)
    ? text.writeTopic
    : version > 1 && change === null && text.chooseChange

  const publish = () =>
    ask(
      send('write_briefing', {
        shift: shift.id,
        topics: topicArgs(topics),
        change: change ?? 'first',
      }),
      () => {
        void draft.writeNow(null)
        onDone?.()
      }
    )
  const kind = isNext ? 'call' : 'plain'
  return (
    <div className="stack">
      <p className="small">{text.proposed}</p>
      <ol className="topics" aria-label={text.briefingTopics}>
        {topics.map((topic, at) => (
          <TopicCard
            key={topic.code}
            topic={topic}
            number={at + 1}
            onWrite={(next) => write({ topics: topics.with(at, next) })}
            onUp={at > 0 ? () => write({ topics: moved(topics, at, at - 1) }) : undefined}
            onDown={
              at < topics.length - 1
                ? () => write({ topics: moved(topics, at, at + 1) })
                : undefined
            }
            onLeaveOut={() => write({ topics: topics.filter((_, other) => other !== at) })}
          />
        ))}
      </ol>
      <AddTopic topics={topics} onAdd={(topic) => write({ topics: [...topics, topic] })} />
      {version > 1 && (
        <Segmented
          label={text.change}
          options={[
            { value: 'before_next_tree', label: text.beforeNextTree },
            { value: 'come_down', label: text.comeDown },
          ]}
          value={change}
          onChange={(next) => write({ change: next })}
        />
      )}
      <AskedNote asked={asked} />
      {lacks && <Why id={whyId}>{lacks}</Why>}
      {lacks ? (
        <Button kind={kind} state="off" describedBy={whyId}>
          {text.publish(version)}
        </Button>
      ) : (
        <Button
          kind={kind}
          state={asked.state === 'asking' ? 'waiting' : 'ready'}
          onPress={publish}
        >
          {text.publish(version)}
        </Button>
      )}
    </div>
  )
}

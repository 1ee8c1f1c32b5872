'use client'

import { Suspense, useId, useState } from 'react'

import { briefingChanges } from '@/lib/domain/safety/briefing-changes'
import { type Question, questions } from '@/lib/domain/safety/briefing-proposals'
import type { Shift } from '@/lib/events/state'
import { useBriefing, useDraft, useSend } from '@/lib/hooks'
import { AskedNote } from '../crew/AskedNote'
import { useAsk } from '../crew/use-ask'
import { useLeadWords } from '../crew/use-lead-words'
import { useWords } from '../layout/Words'
import { NewInBriefing } from '../ready/NewInBriefing'
import { Button } from '../ui/Button'
import { offWhen } from '../ui/button-look'
import { Why } from '../ui/Why'
import { AddTopic } from './AddTopic'
import {
  type BriefingDraft,
  emptyTopic,
  isWritten,
  knownCode,
  moved,
  topicArgs,
  topicsOf,
} from './briefing-draft'
import { NotTakenIn } from './NotTakenIn'
import { Questions } from './Questions'
import { TopicCard } from './TopicCard'
import { useProposals } from './use-proposals'
import { WhoHearsWhen } from './WhoHearsWhen'

type BriefingFormProps = {
  shift: Shift & { id: string }
  /** The next step of the screen; otherwise another one holds the apricot. */
  isNext: boolean
  onDone?: () => void
}

/** Writes the briefing of a shift, or its next version: topics, their order, own words. */
export function BriefingForm(props: BriefingFormProps) {
  const { common } = useWords()
  // It needs the words of both languages; the screen around it stays while they come.
  return (
    <Suspense fallback={<p role="status">{common.asking}</p>}>
      <Topics {...props} />
    </Suspense>
  )
}

function Topics({ shift, isNext, onDone }: BriefingFormProps) {
  const words = useWords()
  const { shift: text, proposals } = useLeadWords()
  const send = useSend()
  const whyId = useId()
  const last = useBriefing(shift.id)
  const proposed = useProposals(shift)
  const draft = useDraft<BriefingDraft | null>(`briefing|${shift.id}`, null)
  const [said, setSaid] = useState('')
  const { asked, ask } = useAsk()
  const version = shift.briefingVersion + 1
  const old = last.state === 'read' ? last.value : null
  const before = old ? topicsOf(old) : proposed.map(({ topic }) => topic)
  const { topics, change, no } = draft.value ?? { topics: before, change: null, no: [] }
  const write = (part: Partial<BriefingDraft>) => draft.write({ topics, change, no, ...part })
  const has = (code: string) => topics.some((topic) => topic.code === code)
  const add = (topic = emptyTopic('')) => write({ topics: [...topics, topic] })
  const changes = old && briefingChanges(old.topics, toldNow(topics))
  const isNew = !changes || changes.same.length < Math.max(topics.length, old.topics.length)
  const lacks = !isWritten(topics)
    ? text.writeTopic
    : !isNew && isSameOrder(before, topics)
      ? proposals.nothingNew
      : version > 1 && change === null && text.chooseChange

  const move = (at: number, to: number) => {
    write({ topics: moved(topics, at, to) })
    const code = knownCode(topics[at]?.code ?? '')
    const title = code ? words.topics[code].title : text.ownTitle
    setSaid(proposals.nowAt(title, to + 1, topics.length))
  }
  const answer = (question: Question, is: 'yes' | 'no') =>
    is === 'yes' ? add(emptyTopic(question)) : write({ no: [...no, question] })
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
  // Until the last version has come, what is typed would begin from nothing.
  if (version > 1 && last.state === 'reading') return <p role="status">{words.common.asking}</p>
  return (
    <div className="stack">
      <p className="small">{text.proposed}</p>
      <ol className="topics" aria-label={text.briefingTopics}>
        {topics.map((topic, at) => (
          <TopicCard
            key={topic.code}
            topic={topic}
            number={at + 1}
            proposed={proposed.find((one) => one.topic.code === topic.code)}
            onWrite={(next) => write({ topics: topics.with(at, next) })}
            onUp={at > 0 ? () => move(at, at - 1) : undefined}
            onDown={at < topics.length - 1 ? () => move(at, at + 1) : undefined}
            onLeaveOut={() => write({ topics: topics.filter((_, other) => other !== at) })}
          />
        ))}
      </ol>
      <p className="sr" role="status">
        {said}
      </p>
      <NotTakenIn proposed={proposed.filter(({ topic }) => !has(topic.code))} onTake={add} />
      <Questions
        asked={questions.filter((one) => !has(one) && !no.includes(one))}
        onAnswer={answer}
      />
      <AddTopic topics={topics} onAdd={add} />
      {version > 1 && <WhoHearsWhen value={change} onChange={(next) => write({ change: next })} />}
      {changes && isNew && <NewInBriefing changes={changes} />}
      <AskedNote asked={asked} />
      {lacks && <Why id={whyId}>{lacks}</Why>}
      <Button
        kind={isNext ? 'call' : 'plain'}
        {...(lacks
          ? offWhen(true, whyId)
          : { state: asked.state === 'asking' ? ('waiting' as const) : ('ready' as const) })}
        onPress={publish}
      >
        {text.publish(version)}
      </Button>
    </div>
  )
}

/** As it will be told, with what is typed so far. */
function toldNow(topics: BriefingDraft['topics']) {
  return topicArgs(topics).map(({ code, en = null, es = null }) => ({ code, en, es }))
}

function isSameOrder(before: BriefingDraft['topics'], now: BriefingDraft['topics']): boolean {
  return before.every(({ code }, at) => now[at]?.code === code)
}

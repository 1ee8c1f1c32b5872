'use client'

import { useState } from 'react'

import type { BriefingChanges, ToldTopic } from '@/lib/domain/safety/briefing-changes'
import { type Briefing, openShiftOf, type Sent, useSelect, useSend } from '@/lib/hooks'
import { routes } from '@/lib/routes'
import { CrewScreen } from '../layout/CrewScreen'
import { useGo } from '../layout/use-go'
import { useStepInHistory } from '../layout/use-step-in-history'
import { useLanguage, useWords } from '../layout/Words'
import { WhyNot } from '../sync/WhyNot'
import { Button } from '../ui/Button'
import { ButtonLink } from '../ui/ButtonLink'
import { offWhen } from '../ui/button-look'
import { RowLine } from '../ui/RowLine'
import { Why } from '../ui/Why'
import { BriefingTopic } from './BriefingTopic'
import { type How, HowHeard } from './HowHeard'
import { NewInBriefing } from './NewInBriefing'
import { topicWords } from './topic-words'

type BriefingPagesProps = {
  briefing: Briefing
  /** Against the version they signed before; null: all of it is new to them. */
  changes: BriefingChanges | null
  /** That version. */
  before: number
}

/** Topic by topic, then the signature. Who signed an earlier version reads what is new first, and may read the rest. */
export function BriefingPages({ briefing, changes, before }: BriefingPagesProps) {
  const words = useWords()
  const language = useLanguage()
  const [page, setPage] = useStepInHistory(`briefing ${briefing.version}`)
  const [how, setHow] = useState<How | null>(null)
  const me = useSelect((view) => view.me)
  const briefed = useSelect((view) => view.state?.briefed[me?.personId ?? ''] ?? null)
  const isOpen = useSelect((view) => openShiftOf(view) !== null)
  const [readsAll, setReadsAll] = useState(false)
  const { version } = briefing
  const topics: readonly (ToldTopic | BriefingChanges)[] = changes
    ? [changes, ...changes.added, ...changes.reworded, ...(readsAll ? changes.same : [])]
    : briefing.topics
  const at = Math.min(page, topics.length - 1)
  const topic = topics[at]
  const isLast = at === topics.length - 1
  const isSigned = briefed?.signedVersion === version
  const text = words.briefing
  if (!topic) return null

  function turnTo(to: number) {
    setPage(to)
    scrollTo(0, 0)
  }

  return (
    <CrewScreen
      why={isLast && <SignWhy {...{ version, how, isSigned, isOpen }} />}
      side={
        at > 0 && (
          <Button kind="square" icon="left" onPress={() => turnTo(at - 1)}>
            {words.common.back}
          </Button>
        )
      }
      step={
        !isLast ? (
          <Button kind="call" onPress={() => turnTo(at + 1)}>
            {text.nextTopic}
          </Button>
        ) : isSigned || !isOpen ? (
          <ButtonLink kind="call" href={routes.ready()}>
            {text.goOn}
          </ButtonLink>
        ) : (
          <Sign
            version={version}
            how={how}
            topics={briefing.topics.length}
            name={me?.personName ?? ''}
          />
        )
      }
    >
      <RowLine
        label={text.progress(at + 1, topics.length)}
        steps={topics.map((_, place) => (place < at ? 'done' : place === at ? 'now' : 'later'))}
      />
      {'code' in topic ? (
        <BriefingTopic key={at} topic={topicWords(topic, language, words)} />
      ) : (
        <>
          <h1>{text.newTitle(before)}</h1>
          <p>{text.newNote}</p>
          <NewInBriefing changes={topic} />
        </>
      )}
      {isLast && changes && !readsAll && changes.same.length > 0 && (
        <Button
          onPress={() => {
            setReadsAll(true)
            turnTo(at + 1)
          }}
        >
          {text.readSame(changes.same.length)}
        </Button>
      )}
      {isLast && !isSigned && isOpen && <HowHeard value={how} onChange={setHow} />}
    </CrewScreen>
  )
}

type SignWhyProps = { version: number; how: How | null; isSigned: boolean; isOpen: boolean }

/** What is to be known before signing, the gravest only. */
function SignWhy({ version, how, isSigned, isOpen }: SignWhyProps) {
  const { briefing, refusals } = useWords()
  const briefed = useSelect((view) => view.state?.briefed[view.me?.personId ?? ''] ?? null)
  const isAgain = (briefed?.signedVersion ?? 0) > 0
  if (isSigned) return <Why icon="check">{briefing.signed(version)}</Why>
  if (!isOpen) return <Why icon="clock">{refusals.shift_not_open({})}</Why>
  return (
    <>
      {isAgain && <Why icon="edit">{briefing.changed(version)}</Why>}
      {(briefed?.givenVersion ?? 0) === 0 && <Why icon="people">{briefing.notGivenYet}</Why>}
      {how === null && <Why id="choose-how">{briefing.chooseHow}</Why>}
    </>
  )
}

type SignProps = { version: number; how: How | null; topics: number; name: string }

function Sign({ version, how, topics, name }: SignProps) {
  const { briefing } = useWords()
  const language = useLanguage()
  const go = useGo()
  const send = useSend()
  const [sent, setSent] = useState<Sent | null>(null)

  async function sign() {
    if (how === null) return
    const answer = await send('sign_briefing', { version, language, how })
    setSent(answer)
    if (answer.state === 'kept') go.push(routes.ready())
  }

  return (
    <div className="grow">
      <WhyNot sent={sent} />
      <Button
        kind="call"
        wide
        sub={briefing.signAs(name, topics)}
        {...offWhen(how === null, 'choose-how')}
        onPress={() => void sign()}
      >
        {briefing.sign}
      </Button>
    </div>
  )
}

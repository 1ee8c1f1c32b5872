'use client'

import { useEffect, useRef, useState } from 'react'

import { useSelect } from '@/lib/hooks'
import { useLeadWords } from '../crew/use-lead-words'
import { useWords } from '../layout/Words'
import { Button } from '../ui/Button'
import { TextArea } from '../ui/TextArea'
import { knownCode, lacksFacts, type TopicDraft, withFacts } from './briefing-draft'
import type { ProposedTopic } from './use-proposals'

type TopicCardProps = {
  topic: TopicDraft
  number: number
  /** Why it is told, where the shift's own facts say so. */
  proposed: ProposedTopic | undefined
  onWrite: (topic: TopicDraft) => void
  onUp: (() => void) | undefined
  onDown: (() => void) | undefined
  onLeaveOut: () => void
}

/** The topic's title, why it is told, its place in the order, and the lead's own words to it. */
export function TopicCard(props: TopicCardProps) {
  const { topic, number, proposed, onWrite, onUp, onDown, onLeaveOut } = props
  const words = useWords()
  const { shift: text, proposals } = useLeadWords()
  const code = knownCode(topic.code)
  const hasWords = `${topic.en}${topic.es}`.trim() !== ''
  const [isOpen, setIsOpen] = useState(code === null || hasWords)
  const title = code === null ? text.ownTitle : words.topics[code].title
  const { card, move } = useKeysAfterMove(number, [text.up(title), text.down(title)])
  const facts = proposed?.topic

  return (
    <li className="topic" ref={card}>
      <div className="topic-head">
        <span className="grow">
          <b>
            {number}. {title}
          </b>
          {proposed && <span className="small">{proposed.why}</span>}
          {proposed && <span className="tiny">{proposed.source}</span>}
        </span>
        <div className="topic-moves">
          {onUp && (
            <Button kind="quiet" icon="higher" label={text.up(title)} onPress={move(0, onUp)} />
          )}
          {onDown && (
            <Button kind="quiet" icon="down" label={text.down(title)} onPress={move(1, onDown)} />
          )}
          {code !== null && (
            <Button
              kind="quiet"
              icon="edit"
              label={text.ownWords(title)}
              expanded={isOpen}
              onPress={() => setIsOpen(!isOpen)}
            />
          )}
          <Button kind="quiet" icon="cross" label={text.leaveOut(title)} onPress={onLeaveOut} />
        </div>
      </div>
      {facts && lacksFacts(topic, facts) && (
        <div className="topic-head">
          <span className="grow small">
            {proposals.newFacts} {proposed.why}
          </span>
          <Button
            label={proposals.putIn(title)}
            onPress={() => {
              onWrite(withFacts(topic, facts))
              setIsOpen(true)
            }}
          >
            {proposals.putInShort}
          </Button>
        </div>
      )}
      {isOpen && (
        <div className="stack">
          <p className="small">{code === null ? text.topicHint : text.wordsHint}</p>
          <BothLanguages topic={topic} onWrite={onWrite} />
          <p className="small">{text.ownHint}</p>
        </div>
      )}
    </li>
  )
}

/** The orchard's language first; the other one if somebody can. */
function BothLanguages({ topic, onWrite }: Pick<TopicCardProps, 'topic' | 'onWrite'>) {
  const { shift: text, proposals } = useLeadWords()
  const first = useSelect((view) => view.state?.orchard.language ?? 'en')
  const labels = { en: text.ownEnglish, es: text.ownSpanish }
  const languages = first === 'en' ? (['en', 'es'] as const) : (['es', 'en'] as const)
  return (
    <div className="fields">
      {languages.map((language) => (
        <TextArea
          key={language}
          label={language === first ? labels[language] : proposals.optional(labels[language])}
          value={topic[language]}
          maxLength={1000}
          onChange={(words) => onWrite({ ...topic, [language]: words })}
        />
      ))}
    </div>
  )
}

/** A moved card takes the keys along: on the same button, or the other one at either end. */
function useKeysAfterMove(number: number, labels: readonly [string, string]) {
  const card = useRef<HTMLLIElement>(null)
  const pressed = useRef<0 | 1 | null>(null)
  // biome-ignore lint/correctness/useExhaustiveDependencies: it has moved when its number is another one
  useEffect(() => {
    if (pressed.current === null) return
    const buttons = [...(card.current?.querySelectorAll('button') ?? [])]
    const of = (label: string) => buttons.find((button) => button.ariaLabel === label)
    const same = of(labels[pressed.current])
    const other = of(labels[pressed.current === 0 ? 1 : 0])
    pressed.current = null
    ;(same ?? other)?.focus()
  }, [number])
  const move = (button: 0 | 1, go: () => void) => () => {
    pressed.current = button
    go()
  }
  return { card, move }
}

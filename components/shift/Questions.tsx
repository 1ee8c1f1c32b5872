'use client'

import {
  coldBelowC,
  gustsFromKmPerH,
  type Question,
  shadeFromC,
} from '@/lib/domain/safety/briefing-proposals'
import { useLeadWords } from '../crew/use-lead-words'
import { useWords } from '../layout/Words'
import { Button } from '../ui/Button'

type QuestionsProps = {
  asked: readonly Question[]
  onAnswer: (question: Question, answer: 'yes' | 'no') => void
}

/** What no orchard knows by itself: yes takes the topic in, no puts the question away. */
export function Questions({ asked, onAnswer }: QuestionsProps) {
  const { common } = useWords()
  const { proposals: text } = useLeadWords()
  const wordsOf = useQuestionWords()
  if (asked.length === 0) return null
  return (
    <section className="stack">
      <h3>{text.askTitle}</h3>
      <ul className="topics">
        {asked.map((question) => (
          <li key={question} className="topic">
            <span>{wordsOf(question)}</span>
            <div className="yes-no">
              <Button
                label={text.yesTo(wordsOf(question))}
                onPress={() => onAnswer(question, 'yes')}
              >
                {common.yes}
              </Button>
              <Button label={text.noTo(wordsOf(question))} onPress={() => onAnswer(question, 'no')}>
                {common.no}
              </Button>
            </div>
          </li>
        ))}
      </ul>
    </section>
  )
}

function useQuestionWords(): (question: Question) => string {
  const { ask } = useLeadWords().proposals
  const inF = (celsius: number) => Math.round((celsius * 9) / 5 + 32)
  return (question) => {
    switch (question) {
      case 'heat':
        return ask.heat(Math.round(shadeFromC), inF(shadeFromC))
      case 'cold':
        return ask.cold(coldBelowC, inF(coldBelowC))
      case 'wind':
        return ask.wind(gustsFromKmPerH, Math.round(gustsFromKmPerH * 0.6214))
      default:
        return ask[question]
    }
  }
}

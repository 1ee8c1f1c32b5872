'use client'

import type { ReactNode } from 'react'

import type { Looked } from '@/lib/domain/safety/five-questions'
import { useWords } from '../layout/Words'
import { ChoiceGroup } from '../ui/ChoiceGroup'
import { Tile } from '../ui/Tile'

type QuestionProps<Answer extends string> = {
  question: number
  title: string
  words: (answer: Answer) => string
  art: (answer: Answer) => ReactNode
}

type OneOfProps<Answer extends string> = QuestionProps<Answer> & {
  choices: readonly Answer[]
  chosen: Answer | null
  onChange: (answer: Answer) => void
}

/** One answer in pictures. */
export function OneOf<Answer extends string>(props: OneOfProps<Answer>) {
  const { question, title, choices, chosen, onChange, words, art } = props
  return (
    <ChoiceGroup label={<Title question={question} title={title} />} as="tiles">
      {choices.map((choice) => (
        <Tile
          key={choice}
          type="radio"
          name={`question-${question}`}
          checked={chosen === choice}
          onChange={() => onChange(choice)}
          art={art(choice)}
        >
          {words(choice)}
        </Tile>
      ))}
    </ChoiceGroup>
  )
}

type SomeOfProps<Sign extends string> = QuestionProps<Sign> & {
  signs: readonly Sign[]
  looked: Looked<Sign> | null
  onChange: (looked: Looked<Sign>) => void
}

/** Some of several in pictures, or none of them, or nobody could tell. */
export function SomeOf<Sign extends string>(props: SomeOfProps<Sign>) {
  const { question, title, signs, looked, onChange, words, art } = props
  const { ours } = useWords()
  const there = looked === 'not_known' ? [] : (looked ?? [])
  return (
    <ChoiceGroup label={<Title question={question} title={title} />} as="tiles">
      {signs.map((sign) => (
        <Tile
          key={sign}
          type="checkbox"
          name={`question-${question}`}
          checked={there.includes(sign)}
          onChange={(is) =>
            onChange(signs.filter((one) => (one === sign ? is : there.includes(one))))
          }
          art={art(sign)}
        >
          {words(sign)}
        </Tile>
      ))}
      <Tile
        type="checkbox"
        name={`question-${question}`}
        checked={looked !== null && looked !== 'not_known' && looked.length === 0}
        onChange={() => onChange([])}
      >
        {ours.none}
      </Tile>
      <Tile
        type="checkbox"
        name={`question-${question}`}
        checked={looked === 'not_known'}
        onChange={() => onChange('not_known')}
      >
        {ours.couldNotTell}
      </Tile>
    </ChoiceGroup>
  )
}

function Title({ question, title }: { question: number; title: string }) {
  const { ours } = useWords()
  return (
    <>
      <span className="small">{ours.questionOf(question)}</span>
      <br />
      {title}
    </>
  )
}

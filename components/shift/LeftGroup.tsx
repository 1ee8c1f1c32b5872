'use client'

import { useId, useState } from 'react'

import { useLeadWords } from '../crew/use-lead-words'
import { Button } from '../ui/Button'
import { ChoiceGroup } from '../ui/ChoiceGroup'
import { Pick } from '../ui/Pick'
import { TextField } from '../ui/TextField'
import type { LeftThing } from './use-left-words'

type LeftGroupProps = {
  title: string
  /** What usually explains it. */
  picks: readonly string[]
  things: readonly LeftThing[]
  whys: Readonly<Record<string, string>>
  onWhy: (whys: Record<string, string>) => void
}

/** People, trees or tools that are still open: why for each, or the same for all that have none. */
export function LeftGroup({ title, picks, things, whys, onWhy }: LeftGroupProps) {
  const { shift: text } = useLeadWords()
  if (things.length === 0) return null
  const silent = things.filter(({ id }) => !whys[id]?.trim())
  return (
    <section className="left-group" aria-label={title}>
      <h3>{title}</h3>
      {silent.length > 1 && (
        <div className="for-all">
          <p className="label">{text.sayForAll(silent.length)}</p>
          <div className="picks">
            {picks.map((why) => (
              <Button
                key={why}
                label={`${text.sayForAll(silent.length)}: ${why}`}
                onPress={() => onWhy(Object.fromEntries(silent.map(({ id }) => [id, why])))}
              >
                {why}
              </Button>
            ))}
          </div>
        </div>
      )}
      <ul className="list">
        {things.map(({ id, words }) => (
          <li key={id} className="left-thing">
            <OneWhy
              words={words}
              picks={picks}
              why={whys[id] ?? ''}
              onWhy={(why) => onWhy({ [id]: why })}
            />
          </li>
        ))}
      </ul>
    </section>
  )
}

type OneWhyProps = {
  words: string
  picks: readonly string[]
  why: string
  onWhy: (why: string) => void
}

function OneWhy({ words, picks, why, onWhy }: OneWhyProps) {
  const { shift: text } = useLeadWords()
  const name = useId()
  const [isOwn, setIsOwn] = useState(why !== '' && !picks.includes(why))
  return (
    <>
      <b>{words}</b>
      <ChoiceGroup label={text.why(words)} hideLabel as="picks">
        {picks.map((pick) => (
          <Pick
            key={pick}
            type="radio"
            low
            name={name}
            checked={!isOwn && pick === why}
            onChange={() => {
              setIsOwn(false)
              onWhy(pick)
            }}
          >
            {pick}
          </Pick>
        ))}
        <Pick type="radio" low name={name} checked={isOwn} onChange={() => setIsOwn(true)}>
          {text.whyWords}
        </Pick>
      </ChoiceGroup>
      {isOwn && (
        <TextField low label={text.why(words)} value={why} maxLength={300} onChange={onWhy} />
      )}
    </>
  )
}

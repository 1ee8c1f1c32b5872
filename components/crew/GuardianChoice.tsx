'use client'

import { useId } from 'react'

import { useSelect, type View } from '@/lib/hooks'
import { useNameOf } from '../sync/use-refusal-words'
import { ChoiceGroup } from '../ui/ChoiceGroup'
import { Pick } from '../ui/Pick'
import { Why } from '../ui/Why'
import { useLeadWords } from './use-lead-words'

type GuardianChoiceProps = {
  value: string | null
  /** Nobody answers for themselves. */
  not?: string
  onChange: (personId: string) => void
  fault?: string | undefined
}

/** The adult who answers for a minor; who is here comes first. */
export function GuardianChoice({ value, not, onChange, fault }: GuardianChoiceProps) {
  const { people: text } = useLeadWords()
  const nameOf = useNameOf()
  const name = useId()
  const adults = useSelect(adultsInOrder)
  return (
    <div>
      <ChoiceGroup label={text.guardian} as="picks">
        {adults
          .filter((id) => id !== not)
          .map((id) => (
            <Pick
              key={id}
              type="radio"
              low
              name={name}
              checked={id === value}
              onChange={() => onChange(id)}
            >
              {nameOf(id)}
            </Pick>
          ))}
      </ChoiceGroup>
      <p className="small">{text.guardianNote}</p>
      {fault && <Why tone="wrong">{fault}</Why>}
    </div>
  )
}

function adultsInOrder({ state, names }: View): string[] {
  const here = state?.attendance ?? {}
  return Object.keys(state?.people ?? {})
    .filter((id) => !state?.minors[id])
    .toSorted(
      (a, b) =>
        Number(Object.hasOwn(here, b)) - Number(Object.hasOwn(here, a)) ||
        (names[a] ?? '').localeCompare(names[b] ?? '')
    )
}

import type { ReactNode } from 'react'

import { Icon, type IconName } from './Icon'
import { Mark, type MarkName } from './Mark'

type FactsProps = {
  facts: readonly {
    icon?: IconName
    mark?: MarkName
    text: ReactNode
  }[]
}

/** A few things that are known, each with its sign. */
export function Facts({ facts }: FactsProps) {
  return (
    <ul className="facts">
      {facts.map(({ icon, mark, text }, place) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: the facts are a fixed short list
        <li key={place}>
          {mark ? <Mark name={mark} size={22} /> : <Icon name={icon ?? 'info'} size={22} />}
          <span>{text}</span>
        </li>
      ))}
    </ul>
  )
}

'use client'

import type { ReactNode } from 'react'

import { useWords } from '../layout/Words'
import { Icon, type IconName } from '../ui/Icon'
import { joinClasses } from '../ui/join-classes'
import { Segmented } from '../ui/Segmented'
import type { Found } from './tool-check'
import './tools.css'

type CheckItemProps = {
  icon: IconName
  name: string
  /** What to look at. */
  checks: readonly string[]
  found: Found | null
  onFound: (found: Found) => void
  /** Opens in place when something is wrong. */
  children?: ReactNode
}

/** One thing to look at, and two squares. A fault opens here, and its outcome is said at once. */
export function CheckItem({ icon, name, checks, found, onFound, children }: CheckItemProps) {
  const { tools } = useWords()
  const isBad = found === 'fault'
  return (
    <li className={joinClasses('look', isBad && 'is-bad')}>
      <div className="row">
        <Icon name={icon} size={28} />
        <div className="grow">
          <b>{name}</b>
          {checks.map((check) => (
            <p key={check} className="tiny">
              {check}
            </p>
          ))}
        </div>
        <Segmented
          label={name}
          hideLabel
          squares
          options={[
            { value: 'in_order', label: tools.inOrder, icon: 'check', tone: 'yes' },
            { value: 'fault', label: tools.fault, icon: 'cross', tone: 'no' },
          ]}
          value={found}
          onChange={onFound}
        />
      </div>
      {isBad && <div className="stack fault-here">{children}</div>}
    </li>
  )
}

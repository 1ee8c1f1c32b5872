'use client'

import type { ReactNode } from 'react'

import { useSelect } from '@/lib/hooks'
import { routes } from '@/lib/routes'
import { LeadScreen } from '../crew/LeadScreen'
import { PrintedHead } from '../layout/PrintedHead'
import { useLeadWords } from '../layout/Words'
import { ButtonLink } from '../ui/ButtonLink'
import './rooms.css'

type RoomProps = {
  title: string
  lead?: ReactNode
  /** Where the arrow goes; null: this is the first of the rooms. */
  back?: { href: string; word: string } | null
  /** What leads may see, too. */
  forLeads?: boolean
  /** A form or a text. */
  reads?: boolean
  children: ReactNode
}

/** One of the manager's rooms: a way back, what it is, and its contents. */
export function Room({ title, lead, back, forLeads = false, reads = false, children }: RoomProps) {
  const { rooms } = useLeadWords()
  const isManager = useSelect((view) => view.state?.me.role === 'manager')
  const way = back === undefined ? { href: routes.rooms(), word: rooms.back } : back
  return (
    <LeadScreen here="rooms" reads={reads}>
      <div className="room printed">
        {way && (isManager || back) && (
          <ButtonLink kind="quiet" icon="left" href={way.href}>
            {way.word}
          </ButtonLink>
        )}
        {isManager || forLeads ? (
          <>
            <PrintedHead />
            <div>
              <h1>{title}</h1>
              {lead !== undefined && <p className="muted">{lead}</p>}
            </div>
            {children}
          </>
        ) : (
          <>
            <h1>{rooms.forManagers}</h1>
            <p>{rooms.forManagersNote}</p>
          </>
        )}
      </div>
    </LeadScreen>
  )
}

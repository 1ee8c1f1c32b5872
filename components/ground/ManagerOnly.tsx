'use client'

import type { ReactNode } from 'react'

import { useSelect } from '@/lib/hooks'
import { routes } from '@/lib/routes'
import { LeadScreen } from '../crew/LeadScreen'
import { useLeadWords } from '../crew/use-lead-words'
import { ButtonLink } from '../ui/ButtonLink'

/** The ground is a manager's; the referee refuses everybody else anyway. */
export function ManagerOnly({ children }: { children: ReactNode }) {
  const { ground } = useLeadWords()
  const isManager = useSelect((view) => view.state?.me.role === 'manager')
  if (isManager) return children
  return (
    <LeadScreen here="rooms">
      <div className="ground-screen">
        <h1>{ground.onlyManager}</h1>
        <p>{ground.onlyManagerNote}</p>
        <ButtonLink kind="call" href={routes.map()}>
          {ground.toMap}
        </ButtonLink>
      </div>
    </LeadScreen>
  )
}

'use client'

import type { ReactNode } from 'react'

import { isLeadView, useSelect } from '@/lib/hooks'
import { routes } from '@/lib/routes'
import { Bench } from '../layout/Bench'
import { CrewGate } from '../layout/CrewGate'
import { PhoneFrame } from '../layout/PhoneFrame'
import { Strip } from '../layout/Strip'
import { useStartWords } from '../layout/Words'
import { ButtonLink } from '../ui/ButtonLink'
import { useLeadWords } from './use-lead-words'

/** Lets in leads and managers; the referee refuses everybody else anyway. */
export function LeadGate({ children }: { children: ReactNode }) {
  return (
    <CrewGate>
      <ForLeads>{children}</ForLeads>
    </CrewGate>
  )
}

function ForLeads({ children }: { children: ReactNode }) {
  return useSelect(isLeadView) ? children : <NotALead />
}

function NotALead() {
  const { common } = useStartWords()
  const { leadMap } = useLeadWords()
  return (
    <PhoneFrame
      who={common.appName}
      bench={
        <Bench
          strip={
            <Strip
              text={common.strip}
              ways={{
                emergency: { href: routes.emergency() },
                stopWork: { href: routes.stopWork() },
              }}
            />
          }
          step={
            <ButtonLink kind="call" href={routes.nextTree()}>
              {leadMap.tabs.myTree}
            </ButtonLink>
          }
        />
      }
    >
      <h1>{leadMap.forLeads}</h1>
      <p>{leadMap.forLeadsNote}</p>
    </PhoneFrame>
  )
}

'use client'

import './lead.css'
import './people.css'

import { type ReactNode, useState } from 'react'

import { countFlagsThatWait, countToLookOver, type OpenCall, useNow, useSelect } from '@/lib/hooks'
import { routes } from '@/lib/routes'
import { CallBand } from '../call/CallBand'
import { EndCall } from '../call/EndCall'
import { Bar } from '../layout/Bar'
import { Signal } from '../layout/CrewScreen'
import { Tabs } from '../layout/Tabs'
import { useFormat } from '../layout/use-format'
import { useTitle } from '../layout/use-title'
import { WideFrame } from '../layout/WideFrame'
import { ButtonLink } from '../ui/ButtonLink'
import { LeadBanners } from './LeadBanners'
import { useLeadWords } from './use-lead-words'
import { usePeopleWaiting } from './use-people-waiting'
import { useShiftLine } from './use-shift-line'

export type LeadTab =
  | 'map'
  | 'calls'
  | 'shift'
  | 'people'
  | 'lookOver'
  | 'flags'
  | 'board'
  | 'rooms'

type LeadScreenProps = {
  here: LeadTab
  /** A map fills the work. */
  fill?: boolean
  /** A form or a text. */
  reads?: boolean
  side?: ReactNode
  sideLabel?: string
  /** What is picked, at the thumbs. */
  deal?: ReactNode
  /** The screen itself says that work is stopped. */
  isAboutStop?: boolean
  children: ReactNode
}

/** Every screen of a lead or manager: the day, the ways between, and stop work at the top right. */
export function LeadScreen({ here, isAboutStop = false, ...frame }: LeadScreenProps) {
  const { leadMap, calls } = useLeadWords()
  const { title, sub } = useShiftLine()
  // Outlives the call that it ended, since it then proposes an incident.
  const [ending, setEnding] = useState<OpenCall | null>(null)
  useTitle()
  return (
    <>
      <WideFrame
        {...frame}
        banners={<LeadBanners hideStop={isAboutStop} />}
        // The screen of calls has them all already.
        band={here !== 'calls' && <CallBand onEnd={setEnding} />}
        bandLabel={calls.band}
        bar={
          <Bar
            title={title}
            sub={sub}
            tabs={<LeadTabs here={here} />}
            end={
              <>
                <Signal />
                <Clock />
                <ButtonLink icon="aid" href={routes.emergency()}>
                  {leadMap.emergency}
                </ButtonLink>
                <ButtonLink kind="stop" icon="stop" href={routes.stopWork()}>
                  {leadMap.stop}
                </ButtonLink>
              </>
            }
          />
        }
      />
      {ending && <EndCall key={ending.id} call={ending} onClose={() => setEnding(null)} />}
    </>
  )
}

function LeadTabs({ here }: { here: LeadTab }) {
  const { leadMap, calls, flags, rooms } = useLeadWords()
  const isManager = useSelect((view) => view.state?.me.role === 'manager')
  const { tabs } = leadMap
  const waiting = usePeopleWaiting()
  const toLookOver = useSelect(countToLookOver)
  const flagsWait = useSelect(countFlagsThatWait)
  const calling = useSelect((view) => Object.keys(view.state?.calls ?? {}).length)
  return (
    <Tabs
      label={tabs.label}
      tabs={[
        { href: routes.map(), word: tabs.map, isHere: here === 'map' },
        { href: routes.calls(), word: calls.title, count: calling, isHere: here === 'calls' },
        { href: routes.flags(), word: flags.tab, count: flagsWait, isHere: here === 'flags' },
        { href: routes.shift(), word: tabs.shift, isHere: here === 'shift' },
        { href: routes.people(), word: tabs.people, count: waiting, isHere: here === 'people' },
        {
          href: routes.lookOver(),
          word: tabs.lookOver,
          count: toLookOver,
          isHere: here === 'lookOver',
        },
        { href: routes.board(), word: tabs.board, isHere: here === 'board' },
        ...(isManager ? [{ href: routes.rooms(), word: rooms.tab, isHere: here === 'rooms' }] : []),
        { href: routes.nextTree(), word: tabs.myTree, isHere: false },
      ]}
    />
  )
}

function Clock() {
  const now = useNow(10_000)
  const format = useFormat()
  return now && <span className="clock num">{format.clock(now)}</span>
}

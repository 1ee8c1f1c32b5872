'use client'

import { useEffect, useRef } from 'react'

import { openShiftOf, useNow, useSelect } from '@/lib/hooks'
import { routes } from '@/lib/routes'
import { dayIn } from '@/lib/util/day-in'
import { LeadScreen } from '../crew/LeadScreen'
import { useLeadWords } from '../crew/use-lead-words'
import { ButtonLink } from '../ui/ButtonLink'
import { ShiftWeather } from '../weather/ShiftWeather'
import { DayRecord } from './DayRecord'
import { DuringShift } from './DuringShift'
import { OnPaper } from './OnPaper'
import './shift.css'
import { WayToOpen } from './WayToOpen'

/** The shift from planning to closing: one next step at a time. */
export function ShiftScreen() {
  const { shift: text, houseRules, shifts, rounds, hours, weather } = useLeadWords()
  const open = useSelect(openShiftOf)
  const zone = useSelect((view) => view.state?.orchard.timeZone ?? 'UTC')
  const now = useNow(60_000)
  const title = useRef<HTMLHeadingElement>(null)
  /** Undefined: not fetched yet. */
  const openId = useSelect((view) => (view.state ? (openShiftOf(view)?.id ?? null) : undefined))
  const read = useRef(openId)
  // Opening and closing change the whole screen: it is read from its top again.
  useEffect(() => {
    if (read.current !== undefined && read.current !== openId) title.current?.scrollIntoView()
    read.current = openId
  }, [openId])
  return (
    <LeadScreen here="shift">
      <div className="shift-screen">
        <h1 ref={title}>{open ? text.isOpen : text.title}</h1>
        {open && now && <DuringShift shift={open} today={dayIn(zone, now)} />}
        {!open && now && (
          <>
            <WayToOpen today={dayIn(zone, now)} />
            <ShiftWeather />
            <DayRecord shiftId={null} />
            <OnPaper />
          </>
        )}
        <p className="row wrap">
          <ButtonLink href={routes.weather()}>{weather.link}</ButtonLink>
          <ButtonLink href={routes.houseRules()}>{houseRules.link}</ButtonLink>
          <ButtonLink href={routes.shifts()}>{shifts.title}</ButtonLink>
          <ButtonLink href={routes.rounds()}>{rounds.title}</ButtonLink>
          <ButtonLink href={routes.hours()}>{hours.title}</ButtonLink>
        </p>
      </div>
    </LeadScreen>
  )
}

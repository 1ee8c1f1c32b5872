/** One shift of last winter, from its planning to its closing. */

import { randomUUID } from 'node:crypto'

import type { DateOnly } from '@/lib/events/state'

import { itIsDay } from '../demo-day'
import { topics } from '../demo-plan'
import { demoSeats } from '../people'
import { planAttendance } from './attendance'
import { planBrush } from './brush'
import { daysAfter } from './calendar'
import { planFinds } from './found'
import { planLookingOver } from './looking-over'
import { planPaper } from './paper'
import { hours, onLookout, type PastShift } from './plan'
import { type Day, dayOf, seatIn, type Winter } from './winter'

export function planShift(winter: Winter, plan: PastShift, date: DateOnly): void {
  const day = dayOf(winter, plan, { date, shift: randomUUID() })
  planFrame(day)
  if (plan.onPaper) {
    planPaper(day)
    return
  }
  planAttendance(day)
  planLookingOver(day)
  planBrush(day)
  planFinds(day)
  planMishaps(day)
}

function planFrame({ winter, plan, date, shift, clock }: Day): void {
  const { agenda, round } = winter
  const lead = seatIn(winter, demoSeats.lead)
  agenda.plan(winter.at(daysAfter(date, -6), hours.evening), async () => {
    const [startsAt, endsAt] = [clock(hours.from), clock(hours.to)].map((time) =>
      time.toISOString()
    )
    if (!startsAt || !endsAt) return
    const scheduled = { round, date, startsAt, endsAt, signal: 'horn' } as const
    await agenda.must(lead, 'schedule_shift', scheduled, shift)
    await agenda.must(lead, 'write_briefing', { shift, topics, change: 'first' })
  })
  agenda.plan(clock(hours.open), async () => {
    await agenda.must(lead, 'open_shift', { shift, off: {} })
    await agenda.must(lead, 'make_exception', itIsDay)
    await agenda.must(lead, 'write_weather', { ...plan.weather, canopy: 'dry' })
  })
  agenda.plan(clock(hours.to), () => agenda.must(lead, 'close_shift', {}))
}

/** A question in the row, and a hand that hurt. */
function planMishaps({ winter, plan, clock }: Day): void {
  const { agenda } = winter
  const lead = seatIn(winter, onLookout)
  const { asks, incident } = plan
  if (asks)
    agenda.plan(clock(asks.at), async () => {
      const call = randomUUID()
      const { by, note, outcome } = asks
      await agenda.must(seatIn(winter, by), 'call_for_help', { kind: 'question', note }, call)
      agenda.pass(1)
      await agenda.must(lead, 'answer_call', { call })
      agenda.pass(6)
      await agenda.must(lead, 'end_call', { call, outcome })
    })
  if (incident)
    agenda.plan(clock(incident.at), () =>
      agenda.must(lead, 'write_incident', { kind: 'other', note: incident.note })
    )
}

/** The demo's sky: hours to come that begin today, whenever that is, and what a lead reads at this hour. */

import { readFileSync } from 'node:fs'
import { join } from 'node:path'

import { type HourlyRow, readHourly } from '@/lib/domain/safety/hourly-csv'
import { clockIn, instantAt } from '@/lib/util/clock-in'

import { root } from '../local/root'
import type { Demo } from './demo-morning'
import { demoOrchard } from './people'
import { mustSend } from './referee'

/** The file has a November; so much warmer is each month, January first. Invented, like the place. */
const warmerC = [-8, -6, 0, 6, 12, 18, 21, 20, 15, 8, 0, -6]

export async function lookAtTheSky({ lead, day }: Demo, now: Date): Promise<void> {
  const hours = hoursFrom(day.shift.date)
  await mustSend(lead, 'bring_in_forecast', {
    hours: hours.map(({ day: date, time, ...row }) => [
      instantAt(date, time, demoOrchard.timeZone),
      ...[row.temperatureC, row.humidity, row.windKmh, row.gustKmh, row.rainMm],
    ]),
  })
  const thisHour = Number(clockIn(demoOrchard.timeZone, now.toISOString()).slice(0, 2))
  const toCome = hours.slice(thisHour)
  const [reading] = toCome
  if (!reading) throw new Error('The demo’s forecast.csv is damaged.')
  await mustSend(lead, 'write_weather', {
    temperatureC: reading.temperatureC,
    humidity: reading.humidity,
    windKmh: reading.windKmh,
    gustKmh: reading.gustKmh,
    canopy: 'dry',
    rainInH: toCome.findIndex(({ rainMm }) => (rainMm ?? 0) > 0),
  })
}

/** The same days one after the other, the first of them today. */
function hoursFrom(today: string): HourlyRow[] {
  const { rows } = readHourly(readFileSync(join(root, 'supabase/seed/forecast.csv'), 'utf8'), {
    dayFirst: false,
  })
  const first = Date.parse(rows[0]?.day ?? '')
  const warmer = warmerC[Number(today.slice(5, 7)) - 1] ?? 0
  return rows.map((row) => ({
    ...row,
    day: new Date(Date.parse(today) + Date.parse(row.day) - first).toISOString().slice(0, 10),
    temperatureC:
      row.temperatureC === null ? null : Math.round((row.temperatureC + warmer) * 10) / 10,
  }))
}
